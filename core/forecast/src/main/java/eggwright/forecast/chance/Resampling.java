package eggwright.forecast.chance;

import java.util.Arrays;
import java.util.random.RandomGenerator;

/** Draws again from weighed draws. */
public final class Resampling {
    private Resampling() {}

    /**
     * Weights from their logs, the greatest cut at the mean times the root of their number (truncated importance sampling, Ionides
     * 2008, J. Comput. Graph. Stat. 17:295-311, from memory): no single draw rules the answer.
     */
    public static double[] truncated(double[] logs) {
        double greatest = Arrays.stream(logs).max().orElse(0);
        var weights = Arrays.stream(logs).map(log -> Math.exp(log - greatest)).toArray();
        double most = Arrays.stream(weights).average().orElse(1) * Math.sqrt(weights.length);
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.min(weights[i], most);
        }
        return weights;
    }

    /** So many places, each as often as its weight says, up to one. */
    public static int[] systematic(double[] weights, int count, double start) {
        double total = Arrays.stream(weights).sum();
        var places = new int[count];
        double reached = weights[0];
        int place = 0;
        for (int i = 0; i < count; i++) {
            double at = (i + start) / count * total;
            while (at > reached && place + 1 < weights.length) {
                reached += weights[++place];
            }
            places[i] = place;
        }
        return places;
    }

    /** Into an order drawn anew, in place. */
    public static void shuffle(int[] places, RandomGenerator random) {
        for (int i = places.length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int kept = places[i];
            places[i] = places[j];
            places[j] = kept;
        }
    }
}
