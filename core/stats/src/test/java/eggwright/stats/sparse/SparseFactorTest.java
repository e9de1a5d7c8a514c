package eggwright.stats.sparse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import java.util.Random;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the dense decomposition of Hipparchus, a general-purpose library, on matrices drawn from a seed. */
class SparseFactorTest {
    private static final double ROUNDING = 1e-10;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void factor_agreesWithADenseOne(long seed) {
        var random = new Random(seed);
        int size = 5 + random.nextInt(40);
        int width = 1 + random.nextInt(4);
        int[] nodes = random.ints(width * (1L + random.nextInt(60)), 0, size).toArray();
        // Two places of one square are never the same node: each grouping has nodes of its own.
        for (int i = 0; i < nodes.length; i++) {
            nodes[i] = nodes[i] / width * width + i % width;
            nodes[i] = nodes[i] >= size ? i % width : nodes[i];
        }
        var pattern = FactorPattern.ofSquares(size, nodes, width);
        var factor = new SparseFactor(pattern);
        var dense = MatrixUtils.createRealIdentityMatrix(size);
        factor.becomeIdentity();
        for (int square = 0; square * width < nodes.length; square++) {
            addSquare(factor, dense, pattern, nodes, square, width, random);
        }
        assertTrue(factor.factorise());
        var expected = new CholeskyDecomposition(dense);
        assertEquals(Math.log(expected.getDeterminant()), factor.logDeterminant(), ROUNDING);
        double[] right = random.doubles(size).toArray();
        double[] solution =
                expected.getSolver().solve(MatrixUtils.createRealVector(right)).toArray();
        factor.solve(right);
        for (int i = 0; i < size; i++) {
            assertEquals(solution[i], right[i], ROUNDING);
        }
        factor.invert();
        var inverse = expected.getSolver().getInverse();
        for (int column = 0; column < size; column++) {
            for (int p = pattern.start[column]; p < pattern.start[column + 1]; p++) {
                assertEquals(inverse.getEntry(pattern.row[p], column), factor.inverseAt(p), ROUNDING);
            }
        }
    }

    private static void addSquare(
            SparseFactor factor,
            RealMatrix dense,
            FactorPattern pattern,
            int[] nodes,
            int square,
            int width,
            Random random) {
        double[] of = random.doubles(width, -2, 2).toArray();
        for (int k = 0; k < width; k++) {
            for (int l = 0; l <= k; l++) {
                int a = nodes[square * width + k];
                int b = nodes[square * width + l];
                factor.add(pattern.place(a, b), of[k] * of[l]);
                dense.addToEntry(a, b, of[k] * of[l]);
                if (a != b) {
                    dense.addToEntry(b, a, of[k] * of[l]);
                }
            }
        }
    }

    @Test
    void factor_saysNo_whenTheMatrixIsNotPositive() {
        var factor = new SparseFactor(FactorPattern.ofSquares(2, new int[] {0, 1}, 2));
        factor.becomeIdentity();
        factor.add(1, 2);
        assertFalse(factor.factorise());
    }

    @Test
    void pattern_refusesNodesThatDoNotMeet() {
        var pattern = FactorPattern.ofSquares(3, new int[] {0, 1}, 2);
        assertEquals(4, pattern.entryCount());
        assertThrows(OutOfRange.class, () -> pattern.place(0, 2));
    }
}
