package eggwright.stats.sparse;

import java.util.Arrays;

/**
 * A symmetric positive matrix, its Cholesky factor, and its inverse where the factor has entries. Filled and factorised
 * again and again in one pattern; not for use by two threads.
 *
 * <p>Source of the factor, column by column: George and Liu 1981, chapter 5; of the inverse: Takahashi, Fagan and Chin
 * 1973, 8th PICA Conference, p. 63 (both from memory). Error: {@code SparseFactorTest} holds both against Hipparchus'
 * dense decomposition.
 */
public final class SparseFactor {
    private static final int NONE = -1;

    private final FactorPattern pattern;
    /** The matrix, then its factor. */
    private final double[] values;

    private final double[] inverse;
    private final double[] work;

    /** A matrix of zeros. */
    public SparseFactor(FactorPattern pattern) {
        this.pattern = pattern;
        values = new double[pattern.row.length];
        inverse = new double[pattern.row.length];
        work = new double[pattern.size];
    }

    /** Makes it the identity, to be added to. */
    public void becomeIdentity() {
        Arrays.fill(values, 0);
        for (int i = 0; i < pattern.size; i++) {
            values[pattern.start[i]] = 1;
        }
    }

    /** Adds to the entry at a place that the pattern named. */
    public void add(int place, double amount) {
        values[place] += amount;
    }

    /** Puts the factor in the matrix' place; false where the matrix is not positive. */
    public boolean factorise() {
        int[] start = pattern.start;
        int[] row = pattern.row;
        int size = pattern.size;
        // Columns wait in a list at the row in which they have their next entry.
        int[] waiting = new int[size];
        Arrays.fill(waiting, NONE);
        int[] next = new int[size];
        int[] at = new int[size];
        for (int column = 0; column < size; column++) {
            int end = start[column + 1];
            for (int p = start[column]; p < end; p++) {
                work[row[p]] = values[p];
            }
            int following;
            for (int earlier = waiting[column]; earlier != NONE; earlier = following) {
                following = next[earlier];
                int from = at[earlier];
                int to = start[earlier + 1];
                double factor = values[from];
                for (int p = from; p < to; p++) {
                    work[row[p]] -= values[p] * factor;
                }
                at[earlier] = from + 1;
                wait(earlier, from + 1, to, waiting, next);
            }
            double diagonal = work[column];
            if (!(diagonal > 0 && diagonal < Double.POSITIVE_INFINITY)) {
                return false;
            }
            double root = Math.sqrt(diagonal);
            values[start[column]] = root;
            for (int p = start[column] + 1; p < end; p++) {
                values[p] = work[row[p]] / root;
            }
            at[column] = start[column] + 1;
            wait(column, start[column] + 1, end, waiting, next);
        }
        return true;
    }

    private void wait(int column, int entry, int end, int[] waiting, int[] next) {
        if (entry < end) {
            int at = pattern.row[entry];
            next[column] = waiting[at];
            waiting[at] = column;
        }
    }

    /** Natural logarithm of the determinant of the matrix that was factorised. */
    public double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < pattern.size; i++) {
            sum += Math.log(values[pattern.start[i]]);
        }
        return 2 * sum;
    }

    /** Puts the solution of matrix x = right side into the right side's place. */
    public void solve(double[] rightSide) {
        int[] start = pattern.start;
        int[] row = pattern.row;
        for (int column = 0; column < pattern.size; column++) {
            double x = rightSide[column] / values[start[column]];
            rightSide[column] = x;
            for (int p = start[column] + 1; p < start[column + 1]; p++) {
                rightSide[row[p]] -= values[p] * x;
            }
        }
        for (int column = pattern.size - 1; column >= 0; column--) {
            double sum = rightSide[column];
            for (int p = start[column] + 1; p < start[column + 1]; p++) {
                sum -= values[p] * rightSide[row[p]];
            }
            rightSide[column] = sum / values[start[column]];
        }
    }

    /** Works out the inverse at every place of the pattern. */
    public void invert() {
        int[] start = pattern.start;
        int[] row = pattern.row;
        for (int column = pattern.size - 1; column >= 0; column--) {
            int first = start[column] + 1;
            int end = start[column + 1];
            double root = values[start[column]];
            for (int p = first; p < end; p++) {
                work[row[p]] = 0;
            }
            for (int p = first; p < end; p++) {
                gather(row[p], values[p], p, end);
            }
            double diagonal = 1 / root;
            for (int p = first; p < end; p++) {
                inverse[p] = -work[row[p]] / root;
                diagonal -= values[p] * inverse[p];
            }
            inverse[start[column]] = diagonal / root;
        }
    }

    /** Adds one entry's share of the inverse's column: the inverse among the rows below, times the factor. */
    private void gather(int at, double factor, int p, int end) {
        int[] row = pattern.row;
        double own = inverse[pattern.start[at]] * factor;
        int q = pattern.start[at] + 1;
        for (int below = p + 1; below < end; below++) {
            int r = row[below];
            while (row[q] < r) {
                q++;
            }
            double z = inverse[q];
            work[r] += z * factor;
            own += z * values[below];
        }
        work[at] += own;
    }

    /** The inverse at a place, after {@link #invert}. */
    public double inverseAt(int place) {
        return inverse[place];
    }
}
