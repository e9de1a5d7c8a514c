package eggwright.cli.farm;

import eggwright.book.picture.Fate;
import eggwright.cli.answer.Answer;
import eggwright.cli.answer.JsonAnswers;
import eggwright.cli.answer.TableAnswers;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Status;
import eggwright.rates.Dimension;
import eggwright.rates.GroupRates;
import eggwright.rates.RateReport;
import eggwright.rates.StageLoss;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** Fertility, hatch and losses by what the user asks for. */
final class ReportCommand {
    private static final List<String> HEADINGS =
            List.of("group", "eggs set", "fertility", "hatch of set", "hatch of fertile", "unaccounted");

    private ReportCommand() {}

    static CommandSpec spec() {
        return FarmCommand.of(
                "report",
                "Fertility, hatch and losses, with counts and 95 % intervals.",
                "eggwright report --by pen",
                ReportCommand::run,
                List.of(FarmCommand.option("by", "WHAT", words())));
    }

    private static String words() {
        return Arrays.stream(Dimension.values()).map(Dimension::word).collect(Collectors.joining(", "));
    }

    private static int run(FarmCommand command) {
        var word = command.given("by").orElse("pen");
        var by = Arrays.stream(Dimension.values())
                .filter(d -> d.word().equals(word))
                .findFirst()
                .orElseThrow(() ->
                        FarmCommands.refused("--by \"" + word + "\" is not one of " + words() + ". Nothing was done."));
        var report = RateReport.of(FarmCommands.ledger(command).picture(), by);
        if (command.asksForJson()) {
            var groups = new ArrayList<Value>();
            report.groups().forEach(g -> groups.add(new Value.Group(group(g))));
            new JsonAnswers(command.out())
                    .write(Answer.of().with("groups", new Value.Many(groups)).with("total", group(report.total())));
        } else {
            TableAnswers.heading(command.out(), HEADINGS);
            for (var group : report.groups()) {
                line(command, group);
            }
            line(command, report.total());
        }
        return Status.DONE;
    }

    private static void line(FarmCommand command, GroupRates group) {
        TableAnswers.line(
                command.out(),
                List.of(
                        group.key(),
                        Integer.toString(group.eggsSet()),
                        shown(group.fertility()),
                        shown(group.hatchOfSet()),
                        shown(group.hatchOfFertile()),
                        Integer.toString(group.eggs(Fate.UNACCOUNTED))),
                HEADINGS);
    }

    private static String shown(Rate rate) {
        if (rate.isEmpty()) {
            return "-";
        }
        var interval = Intervals.wilson95(rate);
        return String.format(
                Locale.ROOT,
                "%d of %d, %.0f %% (%.0f to %.0f)",
                rate.count(),
                rate.of(),
                rate.pct(),
                100 * interval.low(),
                100 * interval.high());
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
