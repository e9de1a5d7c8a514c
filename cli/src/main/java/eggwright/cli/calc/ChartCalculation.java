package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.csv.ColumnTable;
import eggwright.sheet.problem.Near;
import eggwright.stats.chart.Baseline;
import eggwright.stats.chart.ControlChart;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** Rates in their order, with the limits of luck. */
final class ChartCalculation implements FileCalculation {
    private static final String PLAIN = "p";
    private static final String OVERDISPERSED = "p-overdispersed";
    private static final String EWMA = "ewma";
    private static final List<String> KINDS = List.of(PLAIN, OVERDISPERSED, EWMA);
    private static final double USUAL_WEIGHT = 0.2;
    private static final double USUAL_WIDTH = 3;

    @Override
    public String name() {
        return "chart";
    }

    @Override
    public String about() {
        return "Rates in the order of the file, each with the limits that luck would keep it in. All rows together are "
                + "the normal that they are held against.";
    }

    @Override
    public String example() {
        return "eggwright calc chart weeks.csv --successes fertile --trials eggs --kind p-overdispersed";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("successes", "COL", "the column of those that did, as fertile eggs"),
                Input.needed("trials", "COL", "the column of those that could have, as eggs set"),
                Input.needed(
                        "kind",
                        "WORD",
                        "p: each rate against luck alone; p-overdispersed: against luck and the usual scatter from row to "
                                + "row (Laney); ewma: a running mean that forgets"),
                Input.optional("lambda", "SHARE", "with ewma, the weight of the newest row; 0.2 where not said"),
                Input.optional("width", "NUMBER", "limits in standard deviations; 3 where not said"));
    }

    @Override
    public Answer answer(Path file, Given given) {
        var successes = given.needed("successes");
        var trials = given.needed("trials");
        var kind = given.needed("kind");
        if (!KINDS.contains(kind)) {
            throw given.wrong(
                    "kind",
                    "there is no chart \"" + kind + "\"."
                            + Near.to(kind, KINDS)
                                    .map(near -> " Did you mean \"" + near + "\"?")
                                    .orElse("")
                            + " There are " + String.join(", ", KINDS) + ".");
        }
        double width = given.number("width").orElse(USUAL_WIDTH);
        if (!(width > 0 && width <= 100)) {
            throw given.wrong("width", width + " is outside above 0 to 100 standard deviations.");
        }
        var weight = given.number("lambda");
        if (weight.isPresent() && !kind.equals(EWMA)) {
            throw given.wrong("lambda", "it goes with --kind ewma alone. Leave it out.");
        }
        if (weight.isPresent() && !(weight.get() > 0 && weight.get() <= 1)) {
            throw given.wrong("lambda", weight.get() + " is outside above 0 to 1.");
        }
        var table = ColumnTable.read(file, List.of(successes, trials), Set.of());
        var rates = Names.rates(table, successes, List.of(trials));
        var baseline = Baseline.of(rates);
        return answer(
                switch (kind) {
                    case PLAIN -> ControlChart.plain(rates, baseline, width);
                    case OVERDISPERSED -> ControlChart.overdispersed(rates, baseline, width);
                    default -> ControlChart.ewma(rates, baseline, weight.orElse(USUAL_WEIGHT), width, 1);
                });
    }

    private static Answer answer(ControlChart chart) {
        return Answer.of()
                .with("center", chart.center())
                .with(
                        "points",
                        new Value.Many(chart.points().stream()
                                .<Value>map(point -> new Value.Group(Answer.of()
                                        .with("index", point.index())
                                        .with("value", point.value())
                                        .with("low", point.low())
                                        .with("high", point.high())
                                        .with("outside", new Value.Truth(point.outside()))))
                                .toList()));
    }
}
