package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.csv.ColumnTable;
import eggwright.stats.deathcurve.DeathInterval;
import eggwright.stats.deathcurve.PhaseRisks;
import eggwright.stats.deathcurve.StepCurve;
import eggwright.stats.deathcurve.Turnbull;
import eggwright.stats.deathcurve.TwoPhaseCurve;
import eggwright.stats.deathcurve.Weibull;
import eggwright.units.OutOfRange;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** On which day embryos died, from break-out classes. */
final class DeathCurveCalculation implements FileCalculation {
    private static final String FROM = "from_day";
    private static final String TO = "to_day";
    private static final String DEATHS = "deaths";
    private static final int MOST_DEATHS = 100_000_000;

    @Override
    public String name() {
        return "death-curve";
    }

    @Override
    public String about() {
        return "On which day embryos died, from classes that are ranges of days (after from_day, by to_day; the same "
                + "day twice is that very day). A row with an empty to_day counts those alive on from_day.";
    }

    @Override
    public String example() {
        return "eggwright calc death-curve break-out.csv --phases 7,17,24";
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.optional(
                "phases",
                "DAYS",
                "also answer the daily chance of dying within phases that end on these days, as 7,17,24"));
    }

    @Override
    public Answer answer(Path file, Given given) {
        var phases = Names.listed(given, "phases").stream()
                .map(day -> phase(given, day))
                .toList();
        var intervals = intervals(ColumnTable.read(file, List.of(FROM, TO, DEATHS), Set.of(TO)));
        var answer = steps(Turnbull.of(intervals)).with("weibull", weibull(intervals));
        return phases.isEmpty() ? answer : answer.with("phases", risks(intervals, phases));
    }

    private static int phase(Given given, String day) {
        try {
            return Integer.parseInt(day);
        } catch (NumberFormatException notWhole) {
            throw given.wrong("phases", day, "a whole day", "7,17,24");
        }
    }

    private static List<DeathInterval> intervals(ColumnTable table) {
        double[] from = table.column(FROM).numbers();
        var to = table.column(TO);
        double[] ends = to.numbersOr(Double.POSITIVE_INFINITY);
        int[] deaths = table.column(DEATHS).wholes(MOST_DEATHS);
        var intervals = new ArrayList<DeathInterval>();
        for (int row = 0; row < deaths.length; row++) {
            try {
                intervals.add(new DeathInterval(from[row], ends[row], deaths[row]));
            } catch (OutOfRange outside) {
                throw table.refused("is wrong in row " + table.line(row) + ": " + Given.sentence(outside));
            }
        }
        return DeathInterval.joined(intervals);
    }

    private static Answer steps(StepCurve curve) {
        var steps = new ArrayList<Value>();
        double died = 0;
        for (var step : curve.steps()) {
            died += step.chance();
            steps.add(new Value.Group(Answer.of()
                    .with(FROM, step.fromDay())
                    .with(TO, step.toDay())
                    .with("probability", step.chance())
                    .with("survival", Math.max(0, 1 - died))));
        }
        return Answer.of()
                .with("steps", new Value.Many(steps))
                .with("log_likelihood", curve.logLikelihood())
                .with("converged", new Value.Truth(curve.converged()));
    }

    private static Answer weibull(List<DeathInterval> intervals) {
        TwoPhaseCurve curve;
        try {
            curve = TwoPhaseCurve.of(intervals);
        } catch (OutOfRange outside) {
            return Answer.of().with("not_estimable", Given.sentence(outside));
        }
        var answer = Answer.of()
                .with("death_share", curve.deathShare())
                .with("early_share", curve.earlyShare())
                .with("early_weight", curve.earlyWeight());
        answer = phase(phase(answer, "early", curve.early()), "late", curve.late());
        if (!curve.heldNarrow().isEmpty()) {
            answer = answer.with(
                    "held_at_half_a_day",
                    Value.texts(curve.heldNarrow().stream()
                            .sorted()
                            .map(wave -> wave.name().toLowerCase(Locale.ROOT))
                            .toList()));
        }
        return answer.with("last_day", curve.lastDay())
                .with("log_likelihood", curve.logLikelihood())
                .with("converged", new Value.Truth(curve.converged()));
    }

    private static Answer phase(Answer answer, String name, Weibull curve) {
        return answer.with(name + "_shape", curve.shape())
                .with(name + "_scale_days", curve.scaleDays())
                .with(name + "_mean_day", curve.meanDay())
                .with(name + "_sd_days", curve.deviationDays());
    }

    private static Value risks(List<DeathInterval> intervals, List<Integer> phases) {
        var fit = PhaseRisks.of(intervals, phases);
        return new Value.Many(fit.risks().stream()
                .<Value>map(risk -> new Value.Group(Answer.of()
                        .with("last_day", risk.lastDay())
                        .with("daily_probability", risk.dailyChance())
                        .with("standard_error", risk.standardError())
                        .with("survival", fit.survivalTo(risk.lastDay()))))
                .toList());
    }
}
