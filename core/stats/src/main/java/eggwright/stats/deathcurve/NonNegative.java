package eggwright.stats.deathcurve;

import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * The smallest value of x'Gx / 2 - c'x with no x below 0, for a positive matrix G.
 *
 * <p>Source: Lawson and Hanson 1974, Solving Least Squares Problems, chapter 23 (from memory).
 */
final class NonNegative {
    private static final double RIDGE = 1e-13;
    private static final double RISING = 1e-11;

    private NonNegative() {}

    /** Where it is least; empty where rounding has left a matrix that is not positive. */
    static Optional<double[]> solve(double[][] matrix, double[] right) {
        int size = right.length;
        double[] x = new double[size];
        var free = new boolean[size];
        for (int round = 0; round < 3 * size + 10; round++) {
            int steepest = steepest(matrix, right, x, free);
            if (steepest < 0) {
                return Optional.of(x);
            }
            free[steepest] = true;
            if (!settle(matrix, right, x, free)) {
                return Optional.empty();
            }
        }
        return Optional.of(x);
    }

    /** The held place at which a step inward gains most; negative where none gains. */
    private static int steepest(double[][] matrix, double[] right, double[] x, boolean[] free) {
        int steepest = -1;
        double most = RISING;
        for (int i = 0; i < x.length; i++) {
            if (!free[i]) {
                double gain = right[i];
                for (int j = 0; j < x.length; j++) {
                    gain -= matrix[i][j] * x[j];
                }
                if (gain > most) {
                    most = gain;
                    steepest = i;
                }
            }
        }
        return steepest;
    }

    /**
     * Goes to the best point of the free places; those that would go below 0 are held on the way. False where there
     * is no best point.
     */
    private static boolean settle(double[][] matrix, double[] right, double[] x, boolean[] free) {
        for (int round = 0; round <= x.length; round++) {
            var there = best(matrix, right, free);
            if (there.isEmpty()) {
                return false;
            }
            double[] best = there.get();
            double share = 1;
            for (int i = 0; i < x.length; i++) {
                if (free[i] && best[i] <= 0) {
                    share = Math.min(share, x[i] / (x[i] - best[i]));
                }
            }
            for (int i = 0; i < x.length; i++) {
                x[i] += free[i] ? share * (best[i] - x[i]) : 0;
            }
            if (share == 1) {
                return true;
            }
            for (int i = 0; i < x.length; i++) {
                if (free[i] && x[i] <= 1e-15) {
                    free[i] = false;
                    x[i] = 0;
                }
            }
        }
        return true;
    }

    private static Optional<double[]> best(double[][] matrix, double[] right, boolean[] free) {
        int[] places = java.util.stream.IntStream.range(0, free.length)
                .filter(i -> free[i])
                .toArray();
        double[] best = new double[free.length];
        if (places.length == 0) {
            return Optional.of(best);
        }
        var part = MatrixUtils.createRealMatrix(places.length, places.length);
        var wanted = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            for (int j = 0; j < places.length; j++) {
                part.setEntry(i, j, matrix[places[i]][places[j]]);
            }
            part.addToEntry(i, i, RIDGE * (1 + matrix[places[i]][places[i]]));
            wanted[i] = right[places[i]];
        }
        try {
            var found =
                    new CholeskyDecomposition(part, 1e-8, 0).getSolver().solve(MatrixUtils.createRealVector(wanted));
            for (int i = 0; i < places.length; i++) {
                best[places[i]] = found.getEntry(i);
            }
            return Optional.of(best);
        } catch (MathRuntimeException notPositive) {
            return Optional.empty();
        }
    }
}
