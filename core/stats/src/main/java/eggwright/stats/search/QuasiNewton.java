package eggwright.stats.search;

/**
 * Descent by the slope in a metric that learns the curvature on the way (BFGS). With a good first metric a step of its
 * own length is nearly always right.
 *
 * <p>Source: Nocedal and Wright 2006, Numerical Optimization, 2nd ed., sections 3.1 and 6.1 (from memory).
 */
public final class QuasiNewton {
    private static final int MOST_STEPS = 300;
    private static final double SHORTEST = 1e-10;
    private static final double ENOUGH = 1e-4;
    private static final double ROUNDING = 1e-13;

    /**
     * Where a search ended.
     *
     * @param metric inverse of the curvature, as learnt
     * @param settled whether a further step would gain less than asked
     */
    public record Found(double[] point, double value, double[] slope, double[][] metric, int steps, boolean settled) {}

    private QuasiNewton() {}

    /**
     * Searches from {@code start}.
     *
     * @param metric a guess of the inverse of the curvature
     * @param closeness squared length of a step, in units of uncertainty, that counts as none
     */
    public static Found search(Objective objective, double[] start, double[][] metric, double closeness) {
        int size = start.length;
        double[] point = start.clone();
        double[] slope = new double[size];
        double[][] inverse = new double[size][];
        for (int i = 0; i < size; i++) {
            inverse[i] = metric[i].clone();
        }
        double value = objective.at(point, slope);
        int steps = 0;
        while (steps < MOST_STEPS && Double.isFinite(value)) {
            double[] step = times(inverse, slope);
            double gain = dot(step, slope);
            if (gain <= closeness) {
                return new Found(point, value, slope, inverse, steps, true);
            }
            steps++;
            double[] there = new double[size];
            double[] thereSlope = new double[size];
            double share = 1;
            double thereValue = Double.NaN;
            while (share > SHORTEST) {
                for (int i = 0; i < size; i++) {
                    there[i] = point[i] - share * step[i];
                }
                thereValue = objective.at(there, thereSlope);
                if (thereValue <= value - ENOUGH * share * gain + ROUNDING * Math.abs(value)) {
                    break;
                }
                double bend = thereValue - value + share * gain;
                double better = share * share * gain / (2 * bend);
                share = better > share / 10 && better < share * 0.6 ? better : share / (bend > 0 ? 5 : 2);
            }
            if (!(share > SHORTEST)) {
                // The last look was elsewhere; stand again where the value is known.
                value = objective.at(point, slope);
                return new Found(point, value, slope, inverse, steps, gain < Math.sqrt(closeness));
            }
            learn(inverse, point, there, slope, thereSlope);
            point = there;
            slope = thereSlope;
            value = thereValue;
        }
        return new Found(point, value, slope, inverse, steps, false);
    }

    private static void learn(double[][] inverse, double[] from, double[] to, double[] fromSlope, double[] toSlope) {
        int size = from.length;
        double[] moved = new double[size];
        double[] turned = new double[size];
        for (int i = 0; i < size; i++) {
            moved[i] = to[i] - from[i];
            turned[i] = toSlope[i] - fromSlope[i];
        }
        double both = dot(moved, turned);
        double[] bent = times(inverse, turned);
        double own = dot(bent, turned);
        if (!(both > 1e-8 * Math.sqrt(dot(moved, moved) * dot(turned, turned)) && own > 0)) {
            return;
        }
        double factor = (1 + own / both) / both;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                inverse[i][j] += factor * moved[i] * moved[j] - (bent[i] * moved[j] + moved[i] * bent[j]) / both;
            }
        }
    }

    public static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = dot(matrix[i], vector);
        }
        return product;
    }

    public static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
