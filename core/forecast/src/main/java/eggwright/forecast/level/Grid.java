package eggwright.forecast.level;

/** The grid on which levels are held: offsets in logits from what the trade's published losses say. */
final class Grid {
    static final int POINTS = 81;
    static final double STEP = 0.08;
    private static final double LOWEST = -STEP * (POINTS - 1) / 2;

    private Grid() {}

    static double at(int point) {
        return LOWEST + STEP * point;
    }

    /** Chances of a step of so many points under a normal of this spread (logits); sums to 1 over all steps. */
    static double[] kernel(double sd) {
        var kernel = new double[2 * POINTS - 1];
        if (sd <= 0) {
            kernel[POINTS - 1] = 1;
            return kernel;
        }
        double total = 0;
        for (int i = 0; i < kernel.length; i++) {
            double z = (i - (POINTS - 1)) * STEP;
            kernel[i] = normalCdf((z + STEP / 2) / sd) - normalCdf((z - STEP / 2) / sd);
            total += kernel[i];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= total;
        }
        return kernel;
    }

    private static double normalCdf(double z) {
        return 0.5 * org.hipparchus.special.Erf.erfc(-z / Math.sqrt(2));
    }

    /** Spreads a density over the grid by a kernel; what would fall off the ends stays at the ends. */
    static double[] spread(double[] density, double[] kernel) {
        var out = new double[POINTS];
        for (int from = 0; from < POINTS; from++) {
            double mass = density[from];
            if (mass < 1e-14) {
                continue;
            }
            for (int to = 0; to < POINTS; to++) {
                out[to] += mass * kernel[to - from + POINTS - 1];
            }
        }
        return out;
    }

    static double normalise(double[] density) {
        double total = 0;
        for (double d : density) {
            total += d;
        }
        if (total > 0) {
            for (int i = 0; i < density.length; i++) {
                density[i] /= total;
            }
        }
        return total;
    }
}
