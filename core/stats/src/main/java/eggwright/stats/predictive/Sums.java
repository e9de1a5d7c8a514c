package eggwright.stats.predictive;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Sums of independent counts, by direct convolution of what is held of each. All terms are positive, so that even tiny
 * chances keep their digits, which a Fourier transform would lose; docs/decisions/0030 tells what that costs.
 */
final class Sums {
    private Sums() {}

    static double[] ofIndependent(double[] a, double[] b) {
        double[] wide = a.length >= b.length ? a : b;
        double[] narrow = a.length >= b.length ? b : a;
        double[] sum = new double[a.length + b.length - 1];
        for (int j = 0; j < narrow.length; j++) {
            double factor = narrow[j];
            for (int i = 0; i < wide.length; i++) {
                sum[i + j] += factor * wide[i];
            }
        }
        return sum;
    }

    static WholeCounts smallestFirst(List<WholeCounts> parts) {
        var queue = new PriorityQueue<WholeCounts>(Comparator.comparingInt(WholeCounts::width));
        queue.addAll(parts);
        var sum = WholeCounts.certain(0);
        while (!queue.isEmpty()) {
            sum = queue.remove();
            var next = queue.poll();
            if (next != null) {
                queue.add(sum.plus(next));
            }
        }
        return sum;
    }
}
