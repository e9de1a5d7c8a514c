package eggwright.stats.mixed;

import eggwright.stats.search.Curvature;
import eggwright.stats.search.QuasiNewton;
import java.util.Arrays;

/**
 * A point near the likeliest, and how uncertain each of its places is: a few rounds in which the coefficients take a
 * Newton step and each deviation is set to what its effects show.
 *
 * <p>Source of the rounds: Schall 1991, Biometrika 78:719 (from memory).
 */
final class FirstGuess {
    private static final int ROUNDS = 12;
    private static final double FIRST_DEVIATION = 0.5;
    private static final double LEAST_DEVIATION = 0.05;
    private static final double MOST_DEVIATION = 5;
    private static final double NEAR = 0.02;
    private static final double LOOSE = 1e-4;

    final double[] point;
    final double[][] metric;

    FirstGuess(Problem problem, Laplace laplace, double[] coefficients) {
        int columns = coefficients.length;
        int size = laplace.size();
        point = Arrays.copyOf(coefficients, size);
        Arrays.fill(point, columns, size, FIRST_DEVIATION);
        metric = new double[size][size];
        for (int round = 0; round < ROUNDS; round++) {
            if (round(problem, laplace) < NEAR) {
                break;
            }
        }
    }

    /** One round; returns the largest change, in units of uncertainty or as a share of a deviation. */
    private double round(Problem problem, Laplace laplace) {
        int columns = problem.design().columns();
        int size = point.length;
        double[] deviations = Arrays.copyOfRange(point, columns, size);
        if (Double.isNaN(laplace.modes.find(Arrays.copyOf(point, columns), deviations, LOOSE))) {
            return 0;
        }
        var information = FixedInformation.at(problem, laplace.modes, deviations);
        double[] free = laplace.effectiveLevels(deviations);
        double[] squares = laplace.squaredEffects();
        double change = 0;
        for (int g = 0; g < deviations.length; g++) {
            int at = columns + g;
            double now = Math.abs(deviations[g]) * Math.sqrt(squares[g] / Math.max(free[g], 1e-8));
            now = Math.clamp(Double.isNaN(now) ? LEAST_DEVIATION : now, LEAST_DEVIATION, MOST_DEVIATION);
            change = Math.max(change, Math.abs(Math.log(now / point[at])));
            point[at] = now;
            metric[at][at] = Math.min(0.25, now * now / (2 * Math.max(free[g], 0.5)));
        }
        var inverse = Curvature.inverse(information);
        if (inverse.isPresent()) {
            double[] slope = laplace.fixedSlope();
            double[] step = QuasiNewton.times(inverse.get(), slope);
            change = Math.max(change, Math.sqrt(Math.max(0, QuasiNewton.dot(step, slope))) / 4);
            for (int i = 0; i < columns; i++) {
                point[i] += step[i];
                System.arraycopy(inverse.get()[i], 0, metric[i], 0, columns);
            }
        } else {
            for (int i = 0; i < columns; i++) {
                metric[i][i] = Math.max(metric[i][i], 1e-3);
            }
        }
        return change;
    }
}
