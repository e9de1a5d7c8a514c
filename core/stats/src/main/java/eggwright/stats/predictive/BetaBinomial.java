package eggwright.stats.predictive;

import eggwright.units.OutOfRange;

/**
 * How many of {@code n} when their common share is known only as Beta(alpha, beta).
 *
 * <p>Range: n from 0 to 10 million, alpha and beta from 1e-6 to 1e12. Error: chances within 1e-9 of themselves
 * against R. Source: Skellam 1948, J. R. Stat. Soc. B 10:257.
 *
 * @param n eggs
 * @param alpha weight of those that did, in eggs
 * @param beta weight of those that did not, in eggs
 */
public record BetaBinomial(int n, double alpha, double beta) {
    private static final double LEAST = 1e-6;
    private static final double MOST = 1e12;

    public BetaBinomial {
        OutOfRange.check("A count of", n, 0, BetaBinomialWalk.MOST_EGGS, "eggs");
        OutOfRange.check("alpha of", alpha, LEAST, MOST, "eggs");
        OutOfRange.check("beta of", beta, LEAST, MOST, "eggs");
    }

    public WholeCounts counts() {
        return BetaBinomialWalk.counts(n, alpha, beta, 1);
    }
}
