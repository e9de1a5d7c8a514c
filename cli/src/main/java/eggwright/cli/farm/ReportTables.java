package eggwright.cli.farm;

import eggwright.book.picture.Fate;
import eggwright.cli.answer.TableAnswers;
import eggwright.desk.rate.VerdictWords;
import eggwright.rates.Contrast;
import eggwright.rates.Contrasts;
import eggwright.rates.GroupRates;
import eggwright.rates.Measure;
import eggwright.rates.account.DeathWindow;
import eggwright.stats.interval.Intervals;
import eggwright.trade.DayRange;
import eggwright.trade.Stage;
import eggwright.units.Rate;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A report for people: rates, luck, losses, deaths, and what the egg room refused. */
final class ReportTables {
    private static final String NOTHING = "-";

    private final PrintWriter out;
    private final Reported report;
    private final VerdictWords verdicts = new VerdictWords(Locale.ENGLISH);

    ReportTables(PrintWriter out, Reported report) {
        this.out = out;
        this.report = report;
    }

    void write() {
        rates();
        luck();
        losses();
        deaths();
        rejects();
    }

    private void rates() {
        TableAnswers.table(
                out,
                List.of(
                        "group",
                        "eggs set",
                        "fertility",
                        "stands on",
                        "hatch of set",
                        "hatch of fertile",
                        "unaccounted"),
                everyGroup()
                        .map(g -> List.of(
                                g.key(),
                                Integer.toString(g.eggsSet()),
                                shown(g.fertility()),
                                g.basis().word(),
                                shown(g.hatchOfSet()),
                                shown(g.hatchOfFertile()),
                                Integer.toString(g.eggs(Fate.UNACCOUNTED))))
                        .toList());
    }

    /** Each single group against the rest of the farm. */
    private void luck() {
        var rows = report.rates().groups().stream()
                .filter(g -> Reported.contrast(report.fertility(), g).isPresent()
                        || Reported.contrast(report.hatch(), g).isPresent())
                .map(g -> {
                    var row = new ArrayList<>(List.of(g.key()));
                    row.addAll(contrast(report.fertility(), g));
                    row.addAll(contrast(report.hatch(), g));
                    return List.copyOf(row);
                })
                .toList();
        if (!rows.isEmpty()) {
            var lamp = report.fertility().measure() == Measure.APPARENT_FERTILITY;
            heading("Against the rest of the farm; how often luck alone does as much stands in brackets");
            TableAnswers.table(
                    out,
                    List.of(
                            "group",
                            lamp ? "fertility at the lamp" : "fertility",
                            "of the rest",
                            "luck",
                            "hatch of fertile",
                            "of the rest",
                            "luck"),
                    rows);
        }
    }

    private List<String> contrast(Contrasts contrasts, GroupRates group) {
        var found = Reported.contrast(contrasts, group);
        return List.of(
                found.map(c -> shown(c.group())).orElse(NOTHING),
                found.map(c -> shown(c.rest())).orElse(NOTHING),
                found.map(c -> verdicts.say(Optional.<Contrast>of(c))).orElse(NOTHING));
    }

    /** Eggs, with no column for a stage at which none was lost. */
    private void losses() {
        var stages = Stage.losses().stream()
                .filter(s -> report.rates().total().loss(s).eggs() > 0)
                .toList();
        var headings = new ArrayList<>(List.of("group", "infertile", "clear, unopened"));
        stages.forEach(s -> headings.add(spelt(s.word())));
        heading("Eggs lost so far, by stage");
        TableAnswers.table(
                out,
                headings,
                everyGroup()
                        .map(g -> {
                            var row = new ArrayList<>(List.of(
                                    g.key(),
                                    Integer.toString(g.eggs(Fate.INFERTILE)),
                                    Integer.toString(g.eggs(Fate.CLEAR_UNOPENED))));
                            stages.forEach(
                                    s -> row.add(Integer.toString(g.loss(s).eggs())));
                            return List.copyOf(row);
                        })
                        .toList());
    }

    private void deaths() {
        var eggs = new TreeMap<Died, Integer>(BY_DAY);
        for (var window : report.deaths()) {
            var stage = switch (window.stage()) {
                case DeathWindow.OneClass(var what) -> spelt(what.word());
                case DeathWindow.DaysOnly only -> "more than one stage";
            };
            eggs.merge(new Died(window.days(), window.fate(), stage), window.eggs(), Integer::sum);
        }
        if (!eggs.isEmpty()) {
            heading("Found dead at the lamp and not opened: they died between two looks");
            TableAnswers.table(
                    out,
                    List.of("died", "seen as", "would be", "eggs"),
                    eggs.entrySet().stream()
                            .map(e -> List.of(
                                    "day " + e.getKey().days().fromDay() + " to "
                                            + e.getKey().days().toDay(),
                                    spelt(e.getKey().fate().word()),
                                    e.getKey().stage(),
                                    Integer.toString(e.getValue())))
                            .toList());
        }
    }

    /** Windows that look the same to a keeper. */
    private record Died(DayRange days, Fate fate, String stage) {}

    private static final Comparator<Died> BY_DAY = Comparator.<Died>comparingInt(
                    d -> d.days().fromDay())
            .thenComparingInt(d -> d.days().toDay())
            .thenComparing(Died::fate)
            .thenComparing(Died::stage);

    private static String spelt(String word) {
        return word.replace('_', ' ');
    }

    private void rejects() {
        if (!report.rejects().isEmpty()) {
            heading("Rejected at gathering");
            TableAnswers.table(
                    out,
                    List.of("group", "rejected"),
                    report.rejects().stream()
                            .map(r -> List.of(Reported.key(r), shown(r.rejected())))
                            .toList());
        }
    }

    private void heading(String text) {
        out.println();
        out.println(text);
    }

    private Stream<GroupRates> everyGroup() {
        return Stream.concat(
                report.rates().groups().stream(), Stream.of(report.rates().total()));
    }

    private static String shown(Rate rate) {
        if (rate.isEmpty()) {
            return NOTHING;
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
}
