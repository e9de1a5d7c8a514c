package eggwright.forecast.level;

import eggwright.forecast.chance.Counts;
import eggwright.forecast.chance.Grid;
import eggwright.forecast.chance.LuckScale;
import java.util.List;
import org.hipparchus.special.Gamma;

/** How likely counts are, for each place on the scale of luck and each guess at the scatter of trays. */
final class Likelihood {
    private static final int MANY = 150;

    private final LuckScale scale;
    private final List<Observed.Count> counts;
    /** Where each count is expected, on the scale. */
    private final double[] expected;
    /** By guess. */
    private final double[] trays;

    /** @param trays guesses at the likeness of the eggs of a tray at this stage */
    Likelihood(LuckScale scale, List<Observed.Count> counts, double... trays) {
        this.scale = scale;
        this.counts = List.copyOf(counts);
        this.expected = counts.stream()
                .mapToDouble(count -> scale.place(count.expectedLogit()))
                .toArray();
        this.trays = trays;
    }

    /** The log of how likely the counts are, by guess of tray scatter and grid point. */
    double[][] logs() {
        var logs = new double[trays.length][Grid.POINTS];
        var shares = new double[Grid.POINTS];
        for (int c = 0; c < expected.length; c++) {
            for (int i = 0; i < Grid.POINTS; i++) {
                shares[i] = Counts.share(scale.logit(expected[c] + Grid.at(i)));
            }
            for (int t = 0; t < trays.length; t++) {
                add(logs[t], counts.get(c), trays[t], shares);
            }
        }
        return logs;
    }

    private static void add(double[] logs, Observed.Count count, double tray, double[] shares) {
        double rho = Counts.together(tray, count.of(), count.trays());
        int x = count.through();
        int n = count.of();
        boolean scatters = rho >= 1e-6;
        double size = scatters ? 1 / rho - 1 : 0;
        double all = scatters ? logRising(size, n) : 0;
        for (int i = 0; i < Grid.POINTS; i++) {
            double p = shares[i];
            logs[i] += scatters
                    ? logRising(p * size, x) + logRising((1 - p) * size, n - x) - all
                    : x * Math.log(p) + (n - x) * Math.log1p(-p);
        }
    }

    /** How sharply the counts say where their offset lies, on average: Fisher's information. */
    double information(int tray, double offset) {
        double sum = 0;
        for (int c = 0; c < expected.length; c++) {
            var count = counts.get(c);
            double rho = Counts.together(trays[tray], count.of(), count.trays());
            double at = expected[c] + offset;
            double p = Counts.share(scale.logit(at));
            double steep = (scale.logit(at + Grid.STEP / 2) - scale.logit(at - Grid.STEP / 2)) / Grid.STEP;
            sum += steep * steep * count.of() * p * (1 - p) / (1 + (count.of() - 1) * rho);
        }
        return sum;
    }

    /**
     * The log of {@code a (a + 1) ... (a + k - 1)}: the beta-binomial in these, without its binomial coefficient, which
     * does not depend on the level. For the counts of a tray a product is quicker than two log-gammas.
     */
    static double logRising(double a, int k) {
        if (k > MANY) {
            return Gamma.logGamma(a + k) - Gamma.logGamma(a);
        }
        double log = 0;
        double product = 1;
        for (int i = 0; i < k; i++) {
            product *= a + i;
            if (product > 1e250 || product < 1e-250) {
                log += Math.log(product);
                product = 1;
            }
        }
        return log + Math.log(product);
    }
}
