package eggwright.stats.mixed;

import java.util.Arrays;

/**
 * Which cells of two kinds can have a coefficient of their own beside those of the kinds. A cell cannot where the kinds'
 * coefficients already single it out: seen as a line between its two kinds, no way round joins them through the cells that
 * have none of their own. Where each kind has a cell with the other's first, that never happens.
 */
final class CellsTold {
    private final boolean[][] plain;
    private final int[] joined;

    private CellsTold(boolean[][] has) {
        plain = new boolean[has.length][];
        for (int a = 0; a < has.length; a++) {
            plain[a] = has[a].clone();
        }
        joined = new int[has.length + has[0].length];
    }

    /** The cells that get a coefficient, of those in which something was counted. */
    static boolean[][] of(boolean[][] has) {
        return new CellsTold(has).told(has);
    }

    private boolean[][] told(boolean[][] has) {
        boolean everyFirst = everyFirst(has);
        var told = new boolean[has.length][has[0].length];
        for (int a = 1; a < has.length; a++) {
            for (int b = 1; b < has[a].length; b++) {
                if (has[a][b]) {
                    plain[a][b] = false;
                    told[a][b] = everyFirst || joins(a, b);
                    plain[a][b] = !told[a][b];
                }
            }
        }
        return told;
    }

    private static boolean everyFirst(boolean[][] has) {
        for (var row : has) {
            if (!row[0]) {
                return false;
            }
        }
        for (boolean first : has[0]) {
            if (!first) {
                return false;
            }
        }
        return true;
    }

    /** Whether the plain cells join two kinds. */
    private boolean joins(int one, int other) {
        Arrays.setAll(joined, i -> i);
        for (int a = 0; a < plain.length; a++) {
            for (int b = 0; b < plain[a].length; b++) {
                if (plain[a][b]) {
                    joined[root(a)] = root(plain.length + b);
                }
            }
        }
        return root(one) == root(plain.length + other);
    }

    private int root(int at) {
        while (joined[at] != at) {
            joined[at] = joined[joined[at]];
            at = joined[at];
        }
        return at;
    }
}
