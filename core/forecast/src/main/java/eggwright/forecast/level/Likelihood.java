package eggwright.forecast.level;

import java.util.List;
import org.hipparchus.special.Gamma;

/** How likely the counts of one set are, for each offset on the grid and each guess at the scatter of trays. */
final class Likelihood {
    private Likelihood() {}

    /** Rows by guess of tray scatter, columns by grid point; each row scaled so that its greatest is 1, its log kept. */
    static final class Table {
        final double[][] scaled;
        final double[] logScale;

        private Table(double[][] scaled, double[] logScale) {
            this.scaled = scaled;
            this.logScale = logScale;
        }
    }

    static Table of(List<Observed.Count> counts, double[] trayGuesses) {
        var scaled = new double[trayGuesses.length][Grid.POINTS];
        var logScale = new double[trayGuesses.length];
        for (int t = 0; t < trayGuesses.length; t++) {
            var logs = new double[Grid.POINTS];
            for (var count : counts) {
                add(logs, count, trayGuesses[t]);
            }
            double greatest = Double.NEGATIVE_INFINITY;
            for (double log : logs) {
                greatest = Math.max(greatest, log);
            }
            logScale[t] = greatest;
            for (int i = 0; i < Grid.POINTS; i++) {
                scaled[t][i] = Math.exp(logs[i] - greatest);
            }
        }
        return new Table(scaled, logScale);
    }

    private static void add(double[] logs, Observed.Count count, double tray) {
        double rho = together(tray, count.of(), count.trays());
        int x = count.through();
        int n = count.of();
        for (int i = 0; i < Grid.POINTS; i++) {
            double p = share(count.expectedLogit() + Grid.at(i));
            logs[i] += rho < 1e-6 ? x * Math.log(p) + (n - x) * Math.log1p(-p) : betaBinomial(x, n, p, rho);
        }
    }

    /** Without the binomial coefficient, which does not depend on the level. */
    private static double betaBinomial(int x, int n, double p, double rho) {
        double size = 1 / rho - 1;
        double a = p * size;
        double b = (1 - p) * size;
        return Gamma.logGamma(a + x)
                - Gamma.logGamma(a)
                + Gamma.logGamma(b + n - x)
                - Gamma.logGamma(b)
                + Gamma.logGamma(size)
                - Gamma.logGamma(size + n);
    }

    /**
     * The rho of several trays counted together, of equal size: their sum has the variance of a beta-binomial with this
     * rho. From n p q (1 + (n/T - 1) rho) = n p q (1 + (n - 1) rho').
     */
    static double together(double rho, int eggs, int trays) {
        return trays <= 1 || eggs <= 1 ? rho : rho * Math.max(0, (double) eggs / trays - 1) / (eggs - 1);
    }

    static double share(double logit) {
        return Math.min(1 - 1e-9, Math.max(1e-9, 1 / (1 + Math.exp(-logit))));
    }

    static double logit(double share) {
        return Math.log(share / (1 - share));
    }
}
