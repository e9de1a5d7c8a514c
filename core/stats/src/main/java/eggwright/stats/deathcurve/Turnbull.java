package eggwright.stats.deathcurve;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;

/**
 * The likeliest distribution of the day of death that takes no shape for granted. Found by Newton's method in the cone of
 * chances, which needs few rounds where the usual plain iteration creeps.
 *
 * <p>Source: Turnbull 1976, J. R. Stat. Soc. B 38:290; the method, Wang 2007, J. R. Stat. Soc. B 69:185 (from memory).
 * Error: chances within 1e-7 of R and of the printed ones, as {@code TurnbullReferenceTest} checks; {@code
 * AnyBreakOutTest} holds the condition for a maximum to 1e-7 on drawn break-outs.
 */
public final class Turnbull {
    private static final int MOST_ROUNDS = 200;
    /** How far above 1 the gradient may be; at a maximum it is 1 where there is a chance, and less elsewhere. */
    private static final double AT_THE_TOP = 1e-10;

    /** What rounding may leave of that; the log-likelihood is then short by no more than this for each egg. */
    private static final double AS_GOOD_AS_THERE = 1e-7;

    private static final double ROUNDING = 1e-13;

    private static final double NOTHING = 1e-9;

    private final Innermost innermost;
    private final double[] counts;
    private final double all;
    private final double[] chance;

    private Turnbull(List<DeathInterval> intervals) {
        innermost = new Innermost(intervals);
        counts = intervals.stream().mapToDouble(DeathInterval::count).toArray();
        all = java.util.Arrays.stream(counts).sum();
        chance = new double[innermost.ranges.size()];
        java.util.Arrays.fill(chance, 1.0 / chance.length);
    }

    /**
     * The curve of these counts.
     *
     * @throws OutOfRange if nothing was counted, or the classes are too many to be worked out
     */
    public static StepCurve of(List<DeathInterval> intervals) {
        var joined = DeathInterval.joined(
                intervals.stream().filter(each -> each.count() > 0).toList());
        if (joined.isEmpty()) {
            throw new OutOfRange("0 eggs in " + intervals.size() + " classes: there is no curve to tell");
        }
        return curve(joined, MOST_ROUNDS);
    }

    static StepCurve curve(List<DeathInterval> joined, int mostRounds) {
        return new Turnbull(joined).curve(mostRounds);
    }

    private StepCurve curve(int mostRounds) {
        for (int round = 0; round < mostRounds; round++) {
            double[] likely = likely(chance);
            double[] gradient = gradient(likely);
            if (highest(gradient) <= 1 + AT_THE_TOP || !step(likely, gradient)) {
                break;
            }
        }
        var steps = new ArrayList<StepCurve.Step>();
        for (int j = 0; j < chance.length; j++) {
            if (chance[j] > NOTHING) {
                var range = innermost.ranges.get(j);
                steps.add(new StepCurve.Step(range.fromDay(), range.toDay(), chance[j]));
            }
        }
        double[] likely = likely(chance);
        return new StepCurve(steps, logLikelihood(likely), highest(gradient(likely)) <= 1 + AS_GOOD_AS_THERE);
    }

    private static double highest(double[] gradient) {
        return java.util.Arrays.stream(gradient).max().orElse(0);
    }

    /** One Newton step; false where it gains nothing. */
    private boolean step(double[] likely, double[] gradient) {
        int size = chance.length;
        double[][] matrix = new double[size][size];
        double[] ones = new double[size];
        for (int j = 0; j < size; j++) {
            ones[j] = 1;
            for (int k = 0; k <= j; k++) {
                double sum = 1;
                for (int i = 0; i < counts.length; i++) {
                    double a = (innermost.holds[i][j] ? 1 / likely[i] : 0) - 2;
                    double b = (innermost.holds[i][k] ? 1 / likely[i] : 0) - 2;
                    sum += counts[i] / all * a * b;
                }
                matrix[j][k] = sum;
                matrix[k][j] = sum;
            }
        }
        var found = NonNegative.solve(matrix, ones);
        if (found.isEmpty()) {
            return false;
        }
        double[] target = found.get();
        double total = java.util.Arrays.stream(target).sum();
        double rise = 0;
        for (int j = 0; j < size; j++) {
            target[j] /= total;
            rise += gradient[j] * (target[j] - chance[j]);
        }
        double before = logLikelihood(likely);
        for (double share = 1; share > 1e-10; share /= 2) {
            double[] there = new double[size];
            for (int j = 0; j < size; j++) {
                there[j] = chance[j] + share * (target[j] - chance[j]);
            }
            double value = logLikelihood(likely(there));
            // Near the top the rise is less than the value's own rounding: then the full step is taken on trust.
            double rounding = share == 1 ? ROUNDING * Math.abs(before) : 0;
            if (value > before + share * rise * all / 10 - rounding) {
                System.arraycopy(there, 0, chance, 0, size);
                return true;
            }
        }
        return false;
    }

    private double[] likely(double[] of) {
        double[] likely = new double[counts.length];
        for (int i = 0; i < likely.length; i++) {
            for (int j = 0; j < of.length; j++) {
                likely[i] += innermost.holds[i][j] ? of[j] : 0;
            }
        }
        return likely;
    }

    private double[] gradient(double[] likely) {
        double[] gradient = new double[chance.length];
        for (int i = 0; i < likely.length; i++) {
            for (int j = 0; j < gradient.length; j++) {
                gradient[j] += innermost.holds[i][j] ? counts[i] / all / likely[i] : 0;
            }
        }
        return gradient;
    }

    private double logLikelihood(double[] likely) {
        double sum = 0;
        for (int i = 0; i < likely.length; i++) {
            sum += counts[i] * Math.log(likely[i]);
        }
        return sum;
    }
}
