package eggwright.stats.deathcurve;

import eggwright.stats.search.Curvature;
import eggwright.stats.search.Objective;
import eggwright.stats.search.QuasiNewton;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;

/**
 * A daily chance of dying that is the same within each phase of days, as days 1 to 7, 8 to 17, 18 to 24, by maximum
 * likelihood from classes that may reach across phases.
 *
 * <p>Error: within 1e-6 of R and SciPy, standard errors within 1e-3 of themselves, as {@code PhaseRisksReferenceTest}
 * checks.
 *
 * @param risks one for each phase
 * @param logLikelihood of the counts, without a multinomial constant
 */
public record PhaseRisks(List<Risk> risks, double logLikelihood) {
    private static final double CLOSE = 1e-14;
    private static final double FIRST_LOGIT = -5;
    /** A phase without deaths has a chance of 0, where a logit has no end. */
    private static final double LEAST_LOGIT = -30;

    public PhaseRisks {
        risks = List.copyOf(risks);
    }

    /**
     * The risk of a phase.
     *
     * @param lastDay of the phase; it begins after the one before
     * @param dailyChance of dying, for one that lives, 0 to 1
     * @param standardError of it; not a number where the chance is at its bound
     */
    public record Risk(int lastDay, double dailyChance, double standardError) {}

    /**
     * Fits the phases that end on these days.
     *
     * @param lastDays whole days, ascending; the last no sooner than any class ends
     * @throws OutOfRange if the days are not so, a class has parts of days, or nothing was counted
     */
    public static PhaseRisks of(List<DeathInterval> intervals, List<Integer> lastDays) {
        check(intervals, lastDays);
        var search = new Likelihood(intervals, lastDays);
        int size = lastDays.size();
        double[] start = new double[size];
        double[][] metric = new double[size][size];
        for (int phase = 0; phase < size; phase++) {
            start[phase] = FIRST_LOGIT;
            metric[phase][phase] = 0.01;
        }
        var found = QuasiNewton.search(search, start, metric, CLOSE);
        var variance = Curvature.inverse(Curvature.at(search, found.point(), found.metric()));
        var risks = new ArrayList<Risk>();
        for (int phase = 0; phase < size; phase++) {
            double chance = 1 / (1 + Math.exp(-found.point()[phase]));
            double error = variance.isEmpty() || found.point()[phase] < LEAST_LOGIT / 2
                    ? Double.NaN
                    : chance * (1 - chance) * Math.sqrt(variance.get()[phase][phase]);
            risks.add(new Risk(lastDays.get(phase), chance, error));
        }
        return new PhaseRisks(risks, -found.value());
    }

    private static void check(List<DeathInterval> intervals, List<Integer> lastDays) {
        int before = 0;
        for (int day : lastDays) {
            if (day <= before) {
                throw new OutOfRange("Phases end on days " + lastDays + ", which do not ascend from 1");
            }
            before = day;
        }
        if (intervals.stream().mapToLong(DeathInterval::count).sum() == 0) {
            throw new OutOfRange("0 eggs in " + intervals.size() + " classes: there is no risk to tell");
        }
        for (var interval : intervals) {
            double end = interval.survived() ? interval.fromDay() : interval.toDay();
            if (end > before || interval.fromDay() % 1 != 0 || end % 1 != 0) {
                throw new OutOfRange("A class of days " + interval.fromDay() + " to " + end
                        + " has parts of days, or ends after the last phase does, on day " + before);
            }
        }
    }

    /** The chance of living past a day, 0 to 1. */
    public double survivalTo(int day) {
        double left = 1;
        int before = 0;
        for (var risk : risks) {
            left *= Math.pow(1 - risk.dailyChance(), Math.clamp((long) day - before, 0, risk.lastDay() - before));
            before = risk.lastDay();
        }
        return left;
    }

    private record Likelihood(List<DeathInterval> intervals, List<Integer> lastDays) implements Objective {
        @Override
        public int size() {
            return lastDays.size();
        }

        @Override
        public double at(double[] point, double[] slope) {
            java.util.Arrays.fill(slope, 0);
            double value = 0;
            for (double logit : point) {
                if (!(Math.abs(logit) <= -LEAST_LOGIT)) {
                    return Double.NaN;
                }
            }
            for (var interval : intervals) {
                double[] own = new double[point.length];
                // An exact day is the day that ends on it.
                double from = interval.isOneDay() ? interval.fromDay() - 1 : interval.fromDay();
                double likely = addSurvival(point, from, 1, own);
                if (!interval.survived()) {
                    likely -= addSurvival(point, interval.toDay(), -1, own);
                }
                if (interval.count() > 0) {
                    value -= interval.count() * Math.log(likely);
                    for (int phase = 0; phase < own.length; phase++) {
                        slope[phase] -= interval.count() * own[phase] / likely;
                    }
                }
            }
            return value;
        }

        private double addSurvival(double[] point, double day, double times, double[] slope) {
            double logarithm = 0;
            double[] days = new double[point.length];
            int before = 0;
            for (int phase = 0; phase < point.length; phase++) {
                days[phase] = Math.clamp(day - before, 0, (double) lastDays.get(phase) - before);
                logarithm -= days[phase] * (Math.max(point[phase], 0) + Math.log1p(Math.exp(-Math.abs(point[phase]))));
                before = lastDays.get(phase);
            }
            double left = Math.exp(logarithm);
            for (int phase = 0; phase < point.length; phase++) {
                slope[phase] -= times * left * days[phase] / (1 + Math.exp(-point[phase]));
            }
            return left;
        }
    }
}
