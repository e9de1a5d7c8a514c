package eggwright.stats.mixed;

import eggwright.units.OutOfRange;
import org.hipparchus.special.Gamma;

/**
 * So many of so many, row by row: eggs of trays, chicks of baskets.
 *
 * @param successes by row, 0 to the row's trials
 * @param trials by row, 0 to 100 million; a row of 0 trials says nothing
 */
public record BinomialCounts(int[] successes, int[] trials) {
    private static final int MOST_TRIALS = 100_000_000;

    public BinomialCounts {
        if (successes.length != trials.length || successes.length == 0) {
            throw new OutOfRange(successes.length + " counts of successes stand beside " + trials.length
                    + " of trials. Give at least one row, and both in each");
        }
        successes = successes.clone();
        trials = trials.clone();
        for (int row = 0; row < successes.length; row++) {
            if (!(trials[row] >= 0
                    && trials[row] <= MOST_TRIALS
                    && successes[row] >= 0
                    && successes[row] <= trials[row])) {
                throw new OutOfRange("Row " + (row + 1) + ": " + successes[row] + " of " + trials[row]
                        + " is outside 0 to all of at most " + MOST_TRIALS);
            }
        }
    }

    /** How many rows. */
    public int rows() {
        return successes.length;
    }

    /** Sum over rows of the logarithm of the binomial coefficient. */
    double logCoefficients() {
        double sum = 0;
        for (int row = 0; row < successes.length; row++) {
            if (successes[row] > 0 && successes[row] < trials[row]) {
                sum += Gamma.logGamma(trials[row] + 1.0)
                        - Gamma.logGamma(successes[row] + 1.0)
                        - Gamma.logGamma(trials[row] - successes[row] + 1.0);
            }
        }
        return sum;
    }
}
