package eggwright.forecast.chance;

/** The grid on which levels are held: offsets in logits from what the trade's published losses say. */
public final class Grid {
    /** Odd: the middle one is 0. */
    public static final int POINTS = 81;
    /** Between two points, in logits. */
    public static final double STEP = 0.08;
    /** No level is impossible, however far from all that was published. */
    private static final double NEVER = 1e-9;

    private static final double LOWEST = -STEP * (POINTS - 1) / 2;

    private Grid() {}

    /** The offset of a point, from 0, in logits. */
    public static double at(int point) {
        return LOWEST + STEP * point;
    }

    /**
     * How often offsets fall near each point; sums to 1, or so nearly that it does not matter. Offsets beyond an end count there.
     *
     * @param offsets in logits, drawn from what is believed
     * @param smoothing spread of the bell that each of them stands for, in logits
     */
    public static double[] density(double[] offsets, double smoothing) {
        var density = new double[POINTS];
        for (double offset : offsets) {
            double place = Math.clamp((offset - LOWEST) / STEP, 0, POINTS - 1);
            int below = (int) place;
            density[below] += 1 - (place - below);
            if (below + 1 < POINTS) {
                density[below + 1] += place - below;
            }
        }
        var smooth = Kernel.of(smoothing).spread(density);
        normalise(smooth);
        for (int i = 0; i < POINTS; i++) {
            smooth[i] += NEVER;
        }
        return smooth;
    }

    /** The nearest offset that is at least so many points from the ends. */
    public static double inside(double offset, int points) {
        return Math.clamp(offset, LOWEST + points * STEP, -LOWEST - points * STEP);
    }

    /** What a table by grid point says of an offset between points; beyond an end as at the end. */
    public static double between(double[] table, double offset) {
        double place = Math.clamp((offset - LOWEST) / STEP, 0, POINTS - 1);
        int below = Math.min(POINTS - 2, (int) place);
        return table[below] + (place - below) * (table[below + 1] - table[below]);
    }

    /** What a table by grid point says of an offset between points; beyond an end it goes on as straight as there. */
    static double along(double[] table, double offset) {
        double place = (offset - LOWEST) / STEP;
        int below = Math.clamp((int) place, 0, POINTS - 2);
        return table[below] + (place - below) * (table[below + 1] - table[below]);
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
