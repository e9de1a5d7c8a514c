package eggwright.forecast.chance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A step adds its variance and moves no mean: the algebra of normals, worked out beside it in plain covariances. */
class BeliefTest {
    private static final int SIZE = 3;
    private static final double[] PRECISION = {4, 1, 0.5, 1, 3, -0.4, 0.5, -0.4, 2};
    private static final double[] PULL = {1, -2, 0.7};
    /** Singular: the first two quantities move together. */
    private static final double[] TOGETHER = {0.09, 0.06, 0.06, 0.04};

    private static final double ROUNDING = 1e-10;

    private static Belief belief() {
        var belief = new Belief(SIZE);
        System.arraycopy(PRECISION, 0, belief.precision, 0, PRECISION.length);
        System.arraycopy(PULL, 0, belief.pull, 0, PULL.length);
        return belief;
    }

    @Test
    void step_addsItsVariance_andLeavesTheMean() {
        var before = belief();
        var expected = Cholesky.of(before.precision, SIZE).inverse();
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                expected[i * SIZE + j] += TOGETHER[i * 2 + j];
            }
        }
        var after = belief();
        after.step(TOGETHER);
        assertArrayEquals(expected, Cholesky.of(after.precision, SIZE).inverse(), ROUNDING);
        assertArrayEquals(
                Cholesky.of(before.precision, SIZE).solve(before.pull),
                Cholesky.of(after.precision, SIZE).solve(after.pull),
                ROUNDING);
    }

    /** What the counts say of a guess is the whole under the curve, which a step only moves about. */
    @Test
    void step_keepsTheWholeUnderTheCurve() {
        var after = belief();
        after.step(TOGETHER);
        assertEquals(logOfTheWhole(belief()), logOfTheWhole(after), ROUNDING);
    }

    /** Seen from after the step, the step is spread by what is left of it and by what is not known of where things are now. */
    @Test
    void stepSeenFromAfter_isAsWideAsTheStep() {
        var after = belief();
        var step = after.step(TOGETHER);
        var now = Cholesky.of(after.precision, SIZE);
        var nothing = new double[SIZE];
        var none = new double[2];
        var mean = step.moved(now.solve(after.pull), none);
        assertArrayEquals(none, mean, ROUNDING);
        var variance = step.variance().clone();
        for (int k = 0; k < SIZE; k++) {
            var unit = nothing.clone();
            unit[k] = 1;
            // The root of the covariance is that of the precision, transposed and inverted.
            var from = now.solve(after.pull);
            var by = now.backward(unit);
            for (int i = 0; i < SIZE; i++) {
                from[i] += by[i];
            }
            var moved = step.moved(from, none);
            for (int i = 0; i < 2; i++) {
                for (int j = 0; j < 2; j++) {
                    variance[i * 2 + j] += moved[i] * moved[j];
                }
            }
        }
        assertArrayEquals(TOGETHER, variance, ROUNDING);
    }

    /** Two quantities that are closely related, one known far better: a pivot of the elimination is below 0. */
    @Test
    void step_isRight_whereOneIsKnownFarBetter() {
        var belief = new Belief(2);
        System.arraycopy(new double[] {1, -30, -30, 1000}, 0, belief.precision, 0, 4);
        double[] variance = {0.1, 0.099, 0.099, 0.1};
        var expected = Cholesky.of(belief.precision, 2).inverse();
        double whole = -Cholesky.of(belief.precision, 2).logDeterminant() / 2;
        belief.step(variance);
        var now = Cholesky.of(belief.precision, 2);
        for (int i = 0; i < 4; i++) {
            assertEquals(expected[i] + variance[i], now.inverse()[i], 1e-8);
        }
        assertEquals(whole, belief.log - now.logDeterminant() / 2, 1e-8);
    }

    private static double logOfTheWhole(Belief belief) {
        var root = Cholesky.of(belief.precision, SIZE);
        var mean = root.solve(belief.pull);
        double squares = 0;
        for (int i = 0; i < SIZE; i++) {
            squares += mean[i] * belief.pull[i];
        }
        return belief.log + squares / 2 - root.logDeterminant() / 2;
    }
}
