package eggwright.forecast.chance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.junit.jupiter.api.Test;

/** Against Hipparchus' decomposition of the same matrix. */
class CholeskyTest {
    private static final int SIZE = 7;
    private static final double ROUNDING = 1e-9;

    @Test
    void solution_inverseAndDeterminant_areThoseOfHipparchus() {
        var random = new SplittableRandom(3);
        var rows = new Array2DRowRealMatrix(SIZE, SIZE);
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                rows.setEntry(i, j, random.nextGaussian());
            }
        }
        var matrix = rows.multiply(rows.transpose());
        var flat = new double[SIZE * SIZE];
        var right = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            right[i] = random.nextGaussian();
            System.arraycopy(matrix.getRow(i), 0, flat, i * SIZE, SIZE);
        }
        var theirs = new CholeskyDecomposition(matrix);
        var ours = Cholesky.of(flat, SIZE);
        assertEquals(Math.log(theirs.getDeterminant()), ours.logDeterminant(), ROUNDING);
        assertArrayEquals(matrix.multiply(matrixOf(ours.solve(right))).getColumn(0), right, ROUNDING);
        assertArrayEquals(theirs.getL().operate(right), ours.times(right), ROUNDING);
        var inverse = theirs.getSolver().getInverse();
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                assertEquals(inverse.getEntry(i, j), ours.inverse()[i * SIZE + j], ROUNDING * inverse.getNorm1() * 100);
            }
        }
    }

    private static Array2DRowRealMatrix matrixOf(double[] column) {
        return new Array2DRowRealMatrix(column);
    }
}
