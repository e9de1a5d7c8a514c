package eggwright.stats.sparse;

import eggwright.units.OutOfRange;
import java.util.Arrays;

/**
 * Where Cholesky's factor of a symmetric matrix can have entries, column by column, in the order of elimination as given.
 *
 * <p>Source: George and Liu 1981, Computer Solution of Large Sparse Positive Definite Systems, chapter 5 (from memory).
 */
public final class FactorPattern {
    /** A factor of 800 MB; beyond it a farm's groups cross each other too widely to be told apart here. */
    private static final long MOST_ENTRIES = 100_000_000;

    private static final int NONE = -1;

    final int size;
    /** Where each column starts in {@link #row}, and the end of the last. */
    final int[] start;
    /** Row of each entry, ascending within a column, the diagonal first. */
    final int[] row;

    private FactorPattern(int size, int[] start, int[] row) {
        this.size = size;
        this.start = start;
        this.row = row;
    }

    /**
     * The pattern of a sum of small dense squares: each takes {@code width} nodes, and every two of them meet.
     *
     * @param size rows of the matrix
     * @param nodes the nodes of all squares, {@code width} each, 0 to size - 1
     * @throws OutOfRange if the factor would hold more than 100 million entries
     */
    public static FactorPattern ofSquares(int size, int[] nodes, int width) {
        var lower = new LowerEntries(size, nodes, width);
        int[] start = new int[size + 1];
        int[] row = new int[Math.max(16, lower.row.length + size)];
        int[] firstChild = filled(size);
        int[] nextChild = filled(size);
        int[] seenBy = filled(size);
        int end = 0;
        for (int column = 0; column < size; column++) {
            start[column] = end;
            row = roomFor(row, (long) end + size - column);
            int first = end;
            row[end++] = column;
            seenBy[column] = column;
            for (int p = lower.start[column]; p < lower.start[column + 1]; p++) {
                int r = lower.row[p];
                if (seenBy[r] != column) {
                    seenBy[r] = column;
                    row[end++] = r;
                }
            }
            for (int child = firstChild[column]; child != NONE; child = nextChild[child]) {
                // A column hands all that lies below it to the next one that it meets.
                for (int p = start[child] + 1; p < start[child + 1]; p++) {
                    int r = row[p];
                    if (seenBy[r] != column) {
                        seenBy[r] = column;
                        row[end++] = r;
                    }
                }
            }
            Arrays.sort(row, first, end);
            if (end > first + 1) {
                int parent = row[first + 1];
                nextChild[column] = firstChild[parent];
                firstChild[parent] = column;
            }
            start[column + 1] = end;
        }
        return new FactorPattern(size, start, Arrays.copyOf(row, end));
    }

    private static int[] filled(int size) {
        int[] filled = new int[size];
        Arrays.fill(filled, NONE);
        return filled;
    }

    private static int[] roomFor(int[] row, long entries) {
        if (entries <= row.length) {
            return row;
        }
        if (row.length >= MOST_ENTRIES) {
            throw new OutOfRange("The groups cross each other so widely that their matrix has more than " + MOST_ENTRIES
                    + " entries. Name fewer groupings");
        }
        return Arrays.copyOf(row, (int) Math.max(entries, Math.min(2L * row.length, MOST_ENTRIES)));
    }

    /** Entries of the factor. */
    public int entryCount() {
        return row.length;
    }

    /** The place of the entry where these two nodes meet. */
    public int place(int one, int other) {
        int column = Math.min(one, other);
        int place = Arrays.binarySearch(row, start[column], start[column + 1], Math.max(one, other));
        if (place < 0) {
            throw new OutOfRange("Nodes " + one + " and " + other + " do not meet in this matrix");
        }
        return place;
    }
}
