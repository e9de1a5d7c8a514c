package eggwright.stats.sparse;

import java.util.Arrays;

/** The entries below the diagonal of a sum of small dense squares, each once, by column. */
final class LowerEntries {
    final int[] start;
    final int[] row;

    LowerEntries(int size, int[] nodes, int width) {
        long[] all = new long[0];
        for (int one = 0; one < width; one++) {
            for (int other = 0; other < one; other++) {
                all = merged(all, pairs(nodes, width, one, other));
            }
        }
        start = new int[size + 1];
        row = new int[all.length];
        for (int i = 0; i < all.length; i++) {
            start[(int) (all[i] >>> Integer.SIZE) + 1]++;
            row[i] = (int) all[i];
        }
        for (int column = 0; column < size; column++) {
            start[column + 1] += start[column];
        }
    }

    private static long[] pairs(int[] nodes, int width, int one, int other) {
        long[] pairs = new long[nodes.length / width];
        for (int square = 0; square < pairs.length; square++) {
            int a = nodes[square * width + one];
            int b = nodes[square * width + other];
            pairs[square] = (long) Math.min(a, b) << Integer.SIZE | Math.max(a, b);
        }
        return distinct(pairs);
    }

    private static long[] merged(long[] some, long[] more) {
        long[] both = Arrays.copyOf(some, some.length + more.length);
        System.arraycopy(more, 0, both, some.length, more.length);
        return distinct(both);
    }

    private static long[] distinct(long[] pairs) {
        Arrays.sort(pairs);
        int kept = 0;
        for (int i = 0; i < pairs.length; i++) {
            if (i == 0 || pairs[i] != pairs[i - 1]) {
                pairs[kept++] = pairs[i];
            }
        }
        return Arrays.copyOf(pairs, kept);
    }
}
