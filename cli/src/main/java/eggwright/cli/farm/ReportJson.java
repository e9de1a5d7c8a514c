package eggwright.cli.farm;

import eggwright.book.picture.Fate;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.rates.Contrast;
import eggwright.rates.Contrasts;
import eggwright.rates.FertilityRanking;
import eggwright.rates.GroupRates;
import eggwright.rates.RateReport;
import eggwright.rates.StageLoss;
import eggwright.rates.account.DeathWindow;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** A report for other programs. Keys are kept stable; more may be added. */
final class ReportJson {
    private ReportJson() {}

    static Answer of(Reported report) {
        return Answer.of()
                .with(
                        "groups",
                        many(
                                report.rates().groups(),
                                g -> group(g).with("fertility_contrast", contrast(report.fertility(), g))
                                        .with("hatch_contrast", contrast(report.hatch(), g))))
                .with("total", group(report.rates().total()))
                .with("fertility_ranking", ranking(report.rates()))
                .with("fertility_compared_by", report.fertility().measure().word())
                .with("death_windows", many(report.deaths(), ReportJson::death))
                .with(
                        "rejects",
                        many(
                                report.rejects(),
                                r -> Answer.of().with("key", Reported.key(r)).with("rejected", rate(r.rejected()))));
    }

    private static <T> Value many(List<T> things, Function<T, Answer> answer) {
        return new Value.Many(things.stream()
                .<Value>map(thing -> new Value.Group(answer.apply(thing)))
                .toList());
    }

    private static String ranking(RateReport report) {
        return switch (report.ranking()) {
            case FertilityRanking.AsCounted counted -> "as_counted";
            case FertilityRanking.Corrected corrected -> "corrected";
            case FertilityRanking.AtTheLamp lamp -> "at_the_lamp";
            case FertilityRanking.Not not -> "not_comparable";
            case FertilityRanking.NothingSeen nothing -> "nothing_seen";
        };
    }

    /** A group that is not compared says so; its numbers are null. */
    private static Answer contrast(Contrasts contrasts, GroupRates group) {
        var found = Reported.contrast(contrasts, group);
        var rest = found.map(Contrast::rest).orElse(new Rate(0, 0));
        double chance = Double.NaN;
        double adjusted = Double.NaN;
        if (found.orElse(null) instanceof Contrast.Compared it) {
            chance = it.chance();
            adjusted = it.adjustedChance();
        }
        return Answer.of()
                .with(
                        "verdict",
                        found.map(c -> c.verdict().name().toLowerCase(Locale.ROOT))
                                .orElse("not_compared"))
                .with("rest", rate(rest))
                .with("chance", chance)
                .with("adjusted_chance", adjusted);
    }

    private static Answer death(DeathWindow window) {
        var trays = window.of().ids().stream()
                .map(id -> id.load().tray().text())
                .distinct()
                .toList();
        var sets = window.of().ids().stream()
                .map(id -> id.load().set().text())
                .distinct()
                .toList();
        return Answer.of()
                .with("sets", Value.texts(sets))
                .with("trays", Value.texts(trays))
                .with("seen_as", window.fate().word())
                .with("eggs", window.eggs())
                .with("from_day", window.days().fromDay())
                .with("to_day", window.days().toDay())
                .with(
                        "stage",
                        switch (window.stage()) {
                            case DeathWindow.OneClass(var what) -> what.word();
                            case DeathWindow.DaysOnly only -> "";
                        });
    }

    private static Answer group(GroupRates group) {
        var losses = new ArrayList<Value>();
        for (var loss : group.losses()) {
            losses.add(new Value.Group(loss(loss)));
        }
        var answer = Answer.of()
                .with("key", group.key())
                .with("eggs_set", group.eggsSet())
                .with("basis", group.basis().word())
                .with("fertility", rate(group.fertility()))
                .with("apparent_fertility", rate(group.apparentFertility()));
        var corrected = group.trueFertility();
        if (corrected != null) {
            answer = answer.with(
                    "true_fertility",
                    Answer.of()
                            .with("estimate_pct", 100 * corrected.estimate())
                            .with("low_pct", 100 * corrected.low())
                            .with("high_pct", 100 * corrected.high()));
        }
        return answer.with("hatch_of_set", rate(group.hatchOfSet()))
                .with("hatch_of_fertile", rate(group.hatchOfFertile()))
                .with("chicks_of_set", rate(group.chicksOfSet()))
                .with("saleable_share", rate(group.saleableShare()))
                .with("losses", new Value.Many(losses))
                .with("infertile", group.eggs(Fate.INFERTILE))
                .with("clears_unopened", group.eggs(Fate.CLEAR_UNOPENED))
                .with("saleable", group.eggs(Fate.SALEABLE))
                .with("removed_unsorted", group.eggs(Fate.REMOVED_UNSORTED))
                .with("pipped_alive_left", group.eggs(Fate.PIPPED_ALIVE_LEFT))
                .with("still_in", group.stillIn())
                .with("undetermined", group.undetermined())
                .with(
                        "fertility_bounds",
                        Answer.of()
                                .with("low_pct", group.bounds().low().pct())
                                .with("high_pct", group.bounds().high().pct()))
                .with("counted_with_others", group.countedWithOthers())
                .with("from_others", group.fromOthers())
                .with("unaccounted", group.eggs(Fate.UNACCOUNTED));
    }

    private static Answer loss(StageLoss loss) {
        return Answer.of()
                .with("stage", loss.stage().word())
                .with("eggs", loss.eggs())
                .with("of_fertile_pct", loss.ofFertile().pct())
                .with("of_set_pct", loss.ofSet().pct());
    }

    private static Answer rate(Rate rate) {
        var counts = Answer.of().with("successes", rate.count()).with("trials", rate.of());
        if (rate.isEmpty()) {
            return counts.with("estimate_pct", Double.NaN)
                    .with("low_pct", Double.NaN)
                    .with("high_pct", Double.NaN);
        }
        var interval = Intervals.wilson95(rate);
        return counts.with("estimate_pct", rate.pct())
                .with("low_pct", 100 * interval.low())
                .with("high_pct", 100 * interval.high());
    }
}
