package eggwright.stats.predictive;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;

/**
 * A share that differs from group to group: each group has its own, drawn from a beta distribution. A count out of such
 * a group is beta-binomial; where nothing scatters it is binomial.
 *
 * @param mean mean share over groups, 0 to 1
 * @param rho how alike two eggs of one group are beyond the mean, 0 to below 1: 1 / (alpha + beta + 1)
 */
public record ScatteredShare(double mean, double rho) {
    public ScatteredShare {
        OutOfRange.check("A mean share of", mean, 0, 1, "");
        if (!(rho >= 0 && rho < 1)) {
            throw new OutOfRange("A likeness within groups (rho) of " + rho + " is outside 0 to below 1");
        }
    }

    /** The share whose groups are Beta(alpha, beta); both above 0. */
    public static ScatteredShare ofBeta(double alpha, double beta) {
        return new ScatteredShare(alpha / (alpha + beta), 1 / (alpha + beta + 1));
    }

    /** How many of {@code eggs} in one group. */
    public WholeCounts of(int eggs) {
        return BetaBinomialWalk.counts(eggs, mean, 1 - mean, scatter());
    }

    /** The share of one group, once so many of so many in it have been seen. */
    public ScatteredShare after(Rate seen) {
        double t = scatter();
        double size = 1 + seen.of() * t;
        // alpha + x over alpha + beta + n, written so that it holds without scatter too.
        double updated = (mean + seen.count() * t) / size;
        return new ScatteredShare(Math.min(1, updated), t / (size + t));
    }

    /** 1 / (alpha + beta): 0 without scatter. */
    private double scatter() {
        return rho / (1 - rho);
    }
}
