package eggwright.stats.search;

import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * Second derivatives by central differences of the exact slope. Steps are a small share of each place's own uncertainty:
 * too long would bring in the next derivatives (squared share), too short the rounding of the slope.
 */
public final class Curvature {
    private static final double SHARE = 0.004;
    private static final double SHORTEST = 1e-7;

    private Curvature() {}

    /** The matrix of second derivatives, made symmetric; {@code metric} says how uncertain each place is. */
    public static double[][] at(Objective objective, double[] point, double[][] metric) {
        int size = point.length;
        double[][] bend = new double[size][size];
        double[] up = new double[size];
        double[] down = new double[size];
        for (int i = 0; i < size; i++) {
            double step = Math.max(SHORTEST, SHARE * Math.sqrt(Math.max(0, metric[i][i])));
            double[] there = point.clone();
            there[i] = point[i] + step;
            objective.at(there, up);
            there[i] = point[i] - step;
            objective.at(there, down);
            for (int j = 0; j < size; j++) {
                bend[i][j] = (up[j] - down[j]) / (2 * step);
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                bend[i][j] = bend[j][i] = (bend[i][j] + bend[j][i]) / 2;
            }
        }
        return bend;
    }

    /** The inverse of a positive matrix; empty where it is not positive. */
    public static Optional<double[][]> inverse(double[][] matrix) {
        int size = matrix.length;
        if (size == 0) {
            return Optional.of(matrix);
        }
        // Scaled to a diagonal of ones, so that the check of what is positive does not hang on units.
        double[] scale = new double[size];
        double[][] scaled = new double[size][size];
        for (int i = 0; i < size; i++) {
            scale[i] = 1 / Math.sqrt(matrix[i][i]);
            if (!Double.isFinite(scale[i])) {
                return Optional.empty();
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                scaled[i][j] = matrix[i][j] * scale[i] * scale[j];
            }
        }
        try {
            double[][] inverse = new CholeskyDecomposition(MatrixUtils.createRealMatrix(scaled), 1e-9, 1e-12)
                    .getSolver()
                    .getInverse()
                    .getData();
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    inverse[i][j] *= scale[i] * scale[j];
                }
            }
            return Optional.of(inverse);
        } catch (MathRuntimeException notPositive) {
            return Optional.empty();
        }
    }
}
