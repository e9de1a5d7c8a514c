package eggwright.stats.chart;

import eggwright.units.OutOfRange;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.special.Erf;

/**
 * How many counts a chart takes, on average, until one lies outside: by luck alone, or after a shift. For counts that are
 * about normal, with limits that have settled.
 *
 * <p>Error: within 0.1 % of R's spc and of the printed designs, as {@code RunLengthReferenceTest} checks.
 */
public final class RunLength {
    private static final int NODES = 96;

    private RunLength() {}

    /**
     * Of a chart of single shares.
     *
     * @param width limits in standard deviations
     * @param shift of the true share, in standard deviations of one count
     */
    public static double ofShares(double width, double shift) {
        OutOfRange.check("Limits of", width, 0.01, 8, "standard deviations");
        double inside = (Erf.erf((width - shift) / Math.sqrt(2)) + Erf.erf((width + shift) / Math.sqrt(2))) / 2;
        return 1 / (1 - inside);
    }

    /**
     * Of an EWMA that starts at the centre. Source: the integral equation of Crowder 1987, Technometrics 29:401 (from
     * memory), by Gauss-Legendre quadrature.
     *
     * @param weight of the newest count, 0.01 to 1
     * @param width limits in standard deviations of the settled running mean
     * @param shift of the true share, in standard deviations of one count
     */
    public static double ofEwma(double weight, double width, double shift) {
        OutOfRange.check("A weight of", weight, 0.01, 1, "for the newest count");
        OutOfRange.check("Limits of", width, 0.01, 8, "standard deviations");
        double limit = width * Math.sqrt(weight / (2 - weight));
        var rule = new GaussIntegratorFactory().legendre(NODES, -limit, limit);
        double[][] equations = new double[NODES][NODES];
        double[] ones = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            ones[i] = 1;
            for (int j = 0; j < NODES; j++) {
                equations[i][j] = (i == j ? 1 : 0)
                        - rule.getWeight(j) * density(rule.getPoint(j), rule.getPoint(i), weight, shift);
            }
        }
        var lengths = new LUDecomposition(MatrixUtils.createRealMatrix(equations))
                .getSolver()
                .solve(MatrixUtils.createRealVector(ones));
        double fromCenter = 1;
        for (int j = 0; j < NODES; j++) {
            fromCenter += rule.getWeight(j) * density(rule.getPoint(j), 0, weight, shift) * lengths.getEntry(j);
        }
        return fromCenter;
    }

    /** How densely the running mean goes from one place to another in one count. */
    private static double density(double to, double from, double weight, double shift) {
        double z = (to - (1 - weight) * from) / weight - shift;
        return Math.exp(-z * z / 2) / (Math.sqrt(2 * Math.PI) * weight);
    }
}
