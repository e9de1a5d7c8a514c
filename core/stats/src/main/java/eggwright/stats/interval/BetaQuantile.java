package eggwright.stats.interval;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Beta;

/**
 * Quantiles of a beta distribution.
 *
 * <p>Range: both shapes above 0 and up to 10 million. Error: within 1e-10. The library's own inverse stops at 1e-9 of
 * the probability, which is too coarse in a tail; so its distribution function is inverted here, to the last digits.
 */
public final class BetaQuantile {
    private static final double RELATIVE = 1e-15;
    private static final double ABSOLUTE = 1e-300;
    private static final double PROBABILITY = 1e-18;
    private static final int ORDER = 5;
    private static final int MOST_STEPS = 2000;

    private BetaQuantile() {}

    /** The share with this chance below it. */
    public static double lower(double chance, double yes, double no) {
        double mean = yes / (yes + no);
        // The solver wants a bracket; halving from the mean keeps it close however small the answer is.
        double high = mean;
        while (below(high, yes, no) < chance) {
            high = 1 - (1 - high) / 2;
            if (high == 1) {
                return 1;
            }
        }
        double low = high / 2;
        while (below(low, yes, no) >= chance) {
            low /= 2;
            if (low < ABSOLUTE) {
                return 0;
            }
        }
        var solver = new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, PROBABILITY, ORDER);
        return solver.solve(MOST_STEPS, share -> below(share, yes, no) - chance, low, high);
    }

    /** The share with this chance above it. */
    public static double upper(double chance, double yes, double no) {
        return 1 - lower(chance, no, yes);
    }

    private static double below(double share, double yes, double no) {
        return Beta.regularizedBeta(share, yes, no);
    }
}
