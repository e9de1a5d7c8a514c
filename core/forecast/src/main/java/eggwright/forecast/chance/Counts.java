package eggwright.forecast.chance;

import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** Draws whole counts. */
public final class Counts {
    /** Small enough that (1/2)^n is far from the smallest double. */
    private static final int AT_ONCE = 400;

    /** Multiplying is quicker than dividing. */
    private static final double[] ONE_OVER = IntStream.rangeClosed(0, AT_ONCE)
            .mapToDouble(k -> 1.0 / Math.max(1, k))
            .toArray();

    private Counts() {}

    /**
     * So many of {@code eggs} come through.
     *
     * @param logit of the expected share
     * @param rho likeness of eggs in one tray
     * @param trays over which the eggs are spread evenly
     */
    public static int through(int eggs, double logit, double rho, int trays, RandomGenerator random) {
        if (eggs <= 0) {
            return 0;
        }
        double p = share(logit);
        double together = together(rho, eggs, trays);
        if (together > 1e-6) {
            double size = 1 / together - 1;
            double a = gamma(p * size, random);
            double b = gamma((1 - p) * size, random);
            p = a + b > 0 ? a / (a + b) : p;
        }
        return binomial(eggs, p, random);
    }

    private static int binomial(int n, double p, RandomGenerator random) {
        if (p > 0.5) {
            return n - binomial(n, 1 - p, random);
        }
        int left = n;
        int sum = 0;
        while (left > 0) {
            int some = Math.min(left, AT_ONCE);
            sum += byInversion(some, p, random);
            left -= some;
        }
        return sum;
    }

    private static int byInversion(int n, double p, RandomGenerator random) {
        if (p <= 0) {
            return 0;
        }
        double ratio = p / (1 - p);
        double chance = Math.exp(n * Math.log1p(-p));
        double u = random.nextDouble();
        int k = 0;
        while (u > chance && k < n) {
            u -= chance;
            k++;
            chance *= ratio * (n - k + 1) * ONE_OVER[k];
        }
        return k;
    }

    /**
     * Marsaglia and Tsang 2000, A simple method for generating gamma variables, ACM Trans. Math. Softw. 26:363-372, its
     * squeeze inside; for shapes below 1 with the usual boost.
     */
    private static double gamma(double shape, RandomGenerator random) {
        if (shape < 1) {
            return gamma(shape + 1, random) * Math.pow(random.nextDouble(), 1 / Math.max(shape, 1e-9));
        }
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian();
            double v = 1 + c * x;
            if (v > 0) {
                v = v * v * v;
                double u = random.nextDouble();
                if (u < 1 - 0.0331 * x * x * x * x || Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
                    return d * v;
                }
            }
        }
    }

    /**
     * The rho of several trays counted together, of equal size: their sum has the variance of a beta-binomial with this
     * rho. From n p q (1 + (n/T - 1) rho) = n p q (1 + (n - 1) rho').
     */
    public static double together(double rho, int eggs, int trays) {
        return trays <= 1 || eggs <= 1 ? rho : rho * Math.max(0, (double) eggs / trays - 1) / (eggs - 1);
    }

    /** The share of a logit, kept just inside 0 to 1. */
    public static double share(double logit) {
        return Math.min(1 - 1e-9, Math.max(1e-9, 1 / (1 + Math.exp(-logit))));
    }
}
