package eggwright.stats.mixed;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;

class CellsToldTest {
    /** Held against the rank of the columns themselves, of Hipparchus' singular values, on drawn tables. */
    @Test
    void cells_leaveColumnsThatSayAllAndNothingTwice() {
        var random = new Random(8);
        for (int i = 0; i < 500; i++) {
            var has = new boolean[2 + random.nextInt(3)][2 + random.nextInt(3)];
            for (var row : has) {
                for (int b = 0; b < row.length; b++) {
                    row[b] = random.nextInt(4) > 0;
                }
            }
            var none = new boolean[has.length][has[0].length];
            var told = CellsTold.of(has);
            int coefficients = count(told);
            assertEquals(rank(has, none) + coefficients, rank(has, told), "nothing is said twice");
            assertEquals(rank(has, has), rank(has, told), "and all is said");
        }
    }

    private static int count(boolean[][] cells) {
        int count = 0;
        for (var row : cells) {
            for (boolean cell : row) {
                count += cell ? 1 : 0;
            }
        }
        return count;
    }

    /** Of the columns of both kinds and of the cells given, over cells with rows; an intercept is their sum. */
    private static int rank(boolean[][] has, boolean[][] own) {
        int width = has[0].length;
        int kinds = has.length + width;
        var columns = MatrixUtils.createRealMatrix(has.length * width, kinds + has.length * width);
        for (int a = 0; a < has.length; a++) {
            for (int b = 0; b < width; b++) {
                int cell = a * width + b;
                if (has[a][b]) {
                    columns.setEntry(cell, a, 1);
                    columns.setEntry(cell, has.length + b, 1);
                    columns.setEntry(cell, kinds + cell, a > 0 && b > 0 && own[a][b] ? 1 : 0);
                }
            }
        }
        return new SingularValueDecomposition(columns).getRank();
    }
}
