package eggwright.stats.overdispersion;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.Arrays;
import java.util.List;

/**
 * What the beta-binomial likelihood needs to know of many groups: for each j how many groups have more than j that did,
 * more than j that did not, and more than j in all. Its cost then hangs on the largest group, not on their number.
 */
final class GroupCounts {
    private static final int MOST_EGGS = 10_000_000;

    final Tail yes;
    final Tail no;
    final Tail all;
    final Rate pooled;
    final int groups;

    GroupCounts(List<Rate> rates) {
        var sum = new Rate(0, 0);
        for (var rate : rates) {
            if (rate.of() > MOST_EGGS) {
                throw new OutOfRange("A group of " + rate.of() + " eggs is outside 0 to " + MOST_EGGS + " eggs");
            }
            sum = sum.plus(rate);
        }
        pooled = sum;
        groups = rates.size();
        yes = new Tail(rates.stream().mapToInt(r -> (int) r.count()).toArray());
        no = new Tail(rates.stream().mapToInt(r -> (int) (r.of() - r.count())).toArray());
        all = new Tail(rates.stream().mapToInt(r -> (int) r.of()).toArray());
    }

    /**
     * Log-likelihood without binomial coefficients.
     *
     * @param mean mean share, 0 to 1
     * @param notMean 1 - mean, given for its digits where mean is close to 1
     * @param scatter 1 / (alpha + beta); 0 is the binomial
     */
    double logLikelihood(double mean, double notMean, double scatter) {
        return yes.sumLog(mean, scatter) + no.sumLog(notMean, scatter) - all.sumLog(1, scatter);
    }

    /** Counts of groups that reach beyond j, and sums over them of log(base + j scatter). */
    static final class Tail {
        /** From here on the sum is its integral with two end terms, right to 1e-12 since the terms bend so little. */
        private static final int SUMMED = 1000;

        /** beyond[j] groups have more than j. */
        final int[] beyond;

        private final int[] large;

        Tail(int[] counts) {
            int[] sorted = counts.clone();
            Arrays.sort(sorted);
            beyond = new int[sorted.length == 0 ? 0 : sorted[sorted.length - 1]];
            int at = 0;
            for (int j = 0; j < beyond.length; j++) {
                while (sorted[at] <= j) {
                    at++;
                }
                beyond[j] = sorted.length - at;
            }
            large = Arrays.stream(sorted).filter(c -> c > SUMMED).toArray();
        }

        double sumLog(double base, double scatter) {
            double sum = 0;
            int end = Math.min(beyond.length, SUMMED);
            for (int j = 0; j < end; j++) {
                sum += beyond[j] * Math.log(base + j * scatter);
            }
            double before = Double.NaN;
            int same = -1;
            for (int count : large) {
                if (count != same) {
                    before = integral(base, scatter, count);
                    same = count;
                }
                sum += before;
            }
            return sum;
        }

        /** Sum over j from SUMMED to count - 1, by Euler and Maclaurin; written so that no digits are lost at 0. */
        private static double integral(double base, double scatter, int count) {
            double low = base + SUMMED * scatter;
            double high = base + count * scatter;
            double steps = count - SUMMED;
            double bend = steps * scatter / low;
            double area = steps * Math.log(high)
                    - steps
                    + (bend < 1e-9 ? steps * (1 - bend / 2) : Math.log1p(bend) * low / scatter);
            return area + (Math.log(low) - Math.log(high)) / 2 + (scatter / high - scatter / low) / 12;
        }
    }
}
