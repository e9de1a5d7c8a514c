package eggwright.stats.search;

import java.util.stream.IntStream;

/** An objective by some of its places, the others held where they are. */
public final class Held implements Objective {
    private final Objective whole;
    private final double[] base;
    private final int[] free;
    private final double[] slopeOfAll;

    /**
     * Holds every place that is not free.
     *
     * @param base a whole point
     * @param held by place
     */
    public Held(Objective whole, double[] base, boolean[] held) {
        this.whole = whole;
        this.base = base.clone();
        free = IntStream.range(0, base.length).filter(i -> !held[i]).toArray();
        slopeOfAll = new double[base.length];
    }

    @Override
    public int size() {
        return free.length;
    }

    @Override
    public double at(double[] point, double[] slope) {
        double value = whole.at(whole(point), slopeOfAll);
        for (int i = 0; i < free.length; i++) {
            slope[i] = slopeOfAll[free[i]];
        }
        return value;
    }

    /** The whole point that a free one stands for. */
    public double[] whole(double[] point) {
        double[] all = base.clone();
        for (int i = 0; i < free.length; i++) {
            all[free[i]] = point[i];
        }
        return all;
    }

    /** The free part of a whole point. */
    public double[] free(double[] all) {
        return IntStream.of(free).mapToDouble(i -> all[i]).toArray();
    }

    /** The free part of a whole matrix. */
    public double[][] free(double[][] all) {
        return IntStream.of(free).mapToObj(i -> free(all[i])).toArray(double[][]::new);
    }

    public int[] freePlaces() {
        return free.clone();
    }
}
