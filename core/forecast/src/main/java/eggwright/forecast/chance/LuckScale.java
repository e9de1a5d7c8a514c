package eggwright.forecast.chance;

import java.util.Arrays;

/**
 * The scale on which the same luck moves every farm equally far. In logits it does not: a farm that loses many eggs, most of them
 * by the losses that scatter, is moved farther than one that loses few, most of them by losses that are even. How far farms are
 * moved is read off farms drawn as published ones differ; the scale is worked out from their mean at each share.
 */
public final class LuckScale {
    /** Farms that lie so near each other, in logits, are taken together. */
    private static final double NEAR = 0.2;
    /** This share of the farms at either end is too few to be read: beyond it farms are moved as there. */
    private static final double FEW = 0.01;
    /** No farm is taken to be moved less or more than this, in published ones. */
    private static final double LEAST = 0.25;

    private static final double MOST = 4;

    private final double published;
    /** The place of each grid point, in logits from the published share. */
    private final double[] places;
    /** Logits from the published share, by place on the grid. */
    private final double[] logits;

    private LuckScale(double published, double[] places, double[] logits) {
        this.published = published;
        this.places = places;
        this.logits = logits;
    }

    /** Logits as they are, for a stage at which all farms are moved alike. */
    public static LuckScale even() {
        var same = new double[Grid.POINTS];
        Arrays.setAll(same, Grid::at);
        return new LuckScale(0, same, same);
    }

    /**
     * @param published where published farms lie, in logits; place 0 of the scale
     * @param farms where drawn farms lie, in logits; at least one
     * @param moved how far each of them is moved by the luck that moves a published one by 1
     */
    public static LuckScale of(double published, double[] farms, double[] moved) {
        var sorted = farms.clone();
        Arrays.sort(sorted);
        double lowest = sorted[(int) (FEW * (sorted.length - 1))];
        double highest = sorted[(int) ((1 - FEW) * (sorted.length - 1))];
        var far = new double[Grid.POINTS];
        for (int i = 0; i < Grid.POINTS; i++) {
            double at = published + Grid.at(i);
            // Where no farm lies the last mean is not worked out again.
            far[i] = i > 0 && (at <= lowest || at - Grid.STEP >= highest)
                    ? far[i - 1]
                    : Math.clamp(near(Math.clamp(at, lowest, highest), farms, moved), LEAST, MOST);
        }
        var places = new double[Grid.POINTS];
        int middle = Grid.POINTS / 2;
        for (int i = middle + 1; i < Grid.POINTS; i++) {
            places[i] = places[i - 1] + Grid.STEP * (1 / far[i - 1] + 1 / far[i]) / 2;
            int below = 2 * middle - i;
            places[below] = places[below + 1] - Grid.STEP * (1 / far[below + 1] + 1 / far[below]) / 2;
        }
        return new LuckScale(published, places, turned(places));
    }

    private static double near(double at, double[] farms, double[] moved) {
        double weights = 0;
        double sum = 0;
        for (int f = 0; f < farms.length; f++) {
            double z = (farms[f] - at) / NEAR;
            double weight = Math.exp(-z * z / 2);
            weights += weight;
            sum += weight * moved[f];
        }
        return sum / weights;
    }

    /** Of a rising table, the one that leads back. */
    private static double[] turned(double[] table) {
        var back = new double[table.length];
        int below = 0;
        for (int i = 0; i < table.length; i++) {
            while (below + 2 < table.length && table[below + 1] < Grid.at(i)) {
                below++;
            }
            double part = (Grid.at(i) - table[below]) / (table[below + 1] - table[below]);
            back[i] = Grid.at(below) + part * Grid.STEP;
        }
        return back;
    }

    /** The place of a share, given in logits. */
    public double place(double logit) {
        return Grid.along(places, logit - published);
    }

    /** The share at a place, in logits. */
    public double logit(double place) {
        return published + Grid.along(logits, place);
    }
}
