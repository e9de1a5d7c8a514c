package eggwright.stats.deathcurve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Two places, worked by hand. */
class NonNegativeTest {
    @Test
    void solve_isTheFreeLeast_whenNoneIsBelowZero() {
        var least = NonNegative.solve(new double[][] {{2, 0}, {0, 4}}, new double[] {1, 1});
        assertArrayEquals(new double[] {0.5, 0.25}, least.orElseThrow(), 1e-9);
    }

    @Test
    void solve_holdsAtZero_whatWouldGoBelow() {
        var least = NonNegative.solve(new double[][] {{1, 0.5}, {0.5, 1}}, new double[] {1, 0.1});
        assertArrayEquals(new double[] {1, 0}, least.orElseThrow(), 1e-9);
    }

    /** Its eigenvalues are 3 and -1: along (1, 1) the value falls for ever. */
    @Test
    void solve_saysThatThereIsNone_whenTheMatrixIsNotPositive() {
        assertTrue(NonNegative.solve(new double[][] {{1, -2}, {-2, 1}}, new double[] {1, 1})
                .isEmpty());
    }
}
