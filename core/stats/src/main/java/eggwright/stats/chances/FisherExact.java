package eggwright.stats.chances;

import eggwright.units.Rate;

/**
 * Fisher's exact test of two rates, two-sided: the chance of a split of the same totals that is no likelier than the one
 * seen. Source: Fisher 1935, J. R. Stat. Soc. 98:39 (from memory).
 */
final class FisherExact {
    /** Splits that are equally likely in truth may differ in their last digits; R allows the same. */
    private static final double EQUALLY_LIKELY = 1 + 1e-7;

    private FisherExact() {}

    static double twoSided(Rate one, Rate other) {
        long yes = one.count() + other.count();
        long least = Math.max(0, yes - other.of());
        long most = Math.min(yes, one.of());
        // Relative to the split seen, walked outwards: no factorials and no logarithms.
        double total = 1;
        double noLikelier = 1;
        double weight = 1;
        for (long k = one.count(); k < most && weight > 0; k++) {
            weight *= ratio(k, yes, one.of(), other.of());
            total += weight;
            noLikelier += weight <= EQUALLY_LIKELY ? weight : 0;
        }
        weight = 1;
        for (long k = one.count(); k > least && weight > 0; k--) {
            weight /= ratio(k - 1, yes, one.of(), other.of());
            total += weight;
            noLikelier += weight <= EQUALLY_LIKELY ? weight : 0;
        }
        return total == Double.POSITIVE_INFINITY ? 0 : Math.min(1, noLikelier / total);
    }

    /** The chance of k + 1 in the first group over that of k. */
    private static double ratio(long k, long yes, long one, long other) {
        return (double) (yes - k) / (k + 1) * ((double) (one - k) / (other - yes + k + 1));
    }
}
