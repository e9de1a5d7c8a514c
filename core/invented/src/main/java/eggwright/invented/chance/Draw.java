package eggwright.invented.chance;

import java.util.List;
import java.util.random.RandomGenerator;

/** Draws from a stream. Shares run from 0 to 1. */
public final class Draw {
    private static final double NEVER_QUITE = 1e-6;

    private Draw() {}

    public static boolean chance(RandomGenerator random, double share) {
        return random.nextDouble() < share;
    }

    /** So many of n; for the small n of trays and pens. */
    public static int binomial(RandomGenerator random, int n, double share) {
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (random.nextDouble() < share) {
                count++;
            }
        }
        return count;
    }

    /** Poisson by products of uniforms (Knuth, The Art of Computer Programming 2, 3.4.1); for means up to some tens. */
    public static int poisson(RandomGenerator random, double mean) {
        double limit = Math.exp(-mean);
        double product = random.nextDouble();
        int count = 0;
        while (product > limit) {
            count++;
            product *= random.nextDouble();
        }
        return count;
    }

    /** Gamma with scale 1 (Marsaglia and Tsang 2000, ACM Trans. Math. Softw. 26:363, with their rule for shapes below 1). */
    public static double gamma(RandomGenerator random, double shape) {
        if (shape < 1) {
            return gamma(random, shape + 1) * Math.pow(1 - random.nextDouble(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian();
            double v = Math.pow(1 + c * x, 3);
            if (v > 0 && Math.log(1 - random.nextDouble()) < x * x / 2 + d - d * v + d * Math.log(v)) {
                return d * v;
            }
        }
    }

    /** A share that scatters about a mean as the share of a beta-binomial of intra-class correlation rho. */
    public static double beta(RandomGenerator random, double mean, double rho) {
        if (rho == 0 || mean <= 0 || mean >= 1) {
            return mean;
        }
        double weight = (1 - rho) / rho;
        double a = gamma(random, mean * weight);
        double b = gamma(random, (1 - mean) * weight);
        double share = a / (a + b);
        return Math.clamp(Double.isNaN(share) ? mean : share, NEVER_QUITE, 1 - NEVER_QUITE);
    }

    /** Student's t: a normal over the root of a mean square. */
    public static double student(RandomGenerator random, double degrees) {
        return random.nextGaussian() / Math.sqrt(2 * gamma(random, degrees / 2) / degrees);
    }

    /** From low to high, both included. */
    public static int between(RandomGenerator random, int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    public static double between(RandomGenerator random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    public static <T> T oneOf(RandomGenerator random, List<T> many) {
        return many.get(random.nextInt(many.size()));
    }

    public static double logit(double share) {
        double inside = Math.clamp(share, NEVER_QUITE, 1 - NEVER_QUITE);
        return Math.log(inside / (1 - inside));
    }

    public static double share(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }
}
