package eggwright.forecast.chance;

import org.hipparchus.special.Erf;

/** The chances of steps on the grid under a normal; only steps that matter are held. Symmetric. */
public final class Kernel {
    /** Beyond so many spreads a step is taken as impossible. */
    private static final double FAR = 5;

    /** Chance of a step of {@code i} points up, and of as many down. */
    private final double[] chance;

    private Kernel(double[] chance) {
        this.chance = chance;
    }

    /** @param sd spread in logits, at least 0 */
    public static Kernel of(double sd) {
        if (sd <= 0) {
            return new Kernel(new double[] {1});
        }
        int reach = (int) Math.min(Grid.POINTS - 1, Math.ceil(FAR * sd / Grid.STEP));
        var chance = new double[reach + 1];
        double total = 0;
        for (int i = 0; i <= reach; i++) {
            double z = i * Grid.STEP;
            chance[i] = normalCdf((z + Grid.STEP / 2) / sd) - normalCdf((z - Grid.STEP / 2) / sd);
            total += i == 0 ? chance[i] : 2 * chance[i];
        }
        for (int i = 0; i <= reach; i++) {
            chance[i] /= total;
        }
        return new Kernel(chance);
    }

    private static double normalCdf(double z) {
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }

    double at(int step) {
        int far = Math.abs(step);
        return far < chance.length ? chance[far] : 0;
    }

    int reach() {
        return chance.length - 1;
    }

    /** Spreads a density, or takes the mean of a likelihood: the same sum, since steps up and down are alike. */
    public double[] spread(double[] values) {
        var out = new double[Grid.POINTS];
        for (int step = -reach(); step <= reach(); step++) {
            // Point by point for one step at a time: the machine does several points at once.
            double weight = at(step);
            int high = Math.min(Grid.POINTS, Grid.POINTS - step);
            for (int to = Math.max(0, -step); to < high; to++) {
                out[to] += weight * values[to + step];
            }
        }
        return out;
    }
}
