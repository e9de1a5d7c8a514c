package eggwright.stats.predictive;

import eggwright.units.OutOfRange;

/**
 * Beta-binomial chances without logarithms: from the likeliest count outwards each chance is its neighbour's times a
 * ratio of small numbers, and the whole is scaled to sum to 1. Only products of positive terms, so each chance is good
 * to about n rounding errors, where log gamma of a large alpha would lose ten digits.
 *
 * <p>Written with yes = alpha t, no = beta t and a step t, so that t = 0 is the binomial.
 */
final class BetaBinomialWalk {
    static final int MOST_EGGS = 10_000_000;
    private static final double NEGLIGIBLE = 1e-32;

    private BetaBinomialWalk() {}

    static WholeCounts counts(int n, double yes, double no, double step) {
        OutOfRange.check("A count of", n, 0, MOST_EGGS, "eggs");
        if (n == 0 || yes == 0) {
            return WholeCounts.ofWeights(n, 0, new double[] {1});
        }
        if (no == 0) {
            return WholeCounts.ofWeights(n, n, new double[] {1});
        }
        int start = likeliest(n, yes, no, step);
        boolean onePeak = yes >= step && no >= step;
        double enough = onePeak ? NEGLIGIBLE : -1;
        double[] weight = new double[n + 1];
        weight[start] = 1;
        int k = start;
        while (k < n && weight[k] > enough) {
            weight[k + 1] = weight[k] * ratio(k, n, yes, no, step);
            k++;
        }
        k = start;
        while (k > 0 && weight[k] > enough) {
            weight[k - 1] = weight[k] / ratio(k - 1, n, yes, no, step);
            k--;
        }
        return WholeCounts.ofWeights(n, 0, weight);
    }

    /** The chance of k + 1 over that of k. */
    private static double ratio(int k, int n, double yes, double no, double step) {
        return (n - k) / (k + 1.0) * ((yes + k * step) / (no + (n - k - 1.0) * step));
    }

    /** Where the ratio falls through 1; where it never does, an end from which the chances stay in range. */
    private static int likeliest(int n, double yes, double no, double step) {
        double bend = yes + no - 2 * step;
        if (bend <= 0) {
            return 0;
        }
        double last = (n * yes - n * step + step - no) / bend;
        return (int) Math.max(0, Math.min(n, Math.floor(last) + 1));
    }
}
