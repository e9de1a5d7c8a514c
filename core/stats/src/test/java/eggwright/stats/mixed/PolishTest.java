package eggwright.stats.mixed;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.search.Objective;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Curves in one place, on which Newton's steps are known by hand. */
class PolishTest {
    /** The root of 1 + x squared: a step leads from x to minus its cube. */
    private static final Objective HYPERBOLA = of(x -> Math.sqrt(1 + x * x), x -> x / Math.sqrt(1 + x * x));

    private static final double[][] UNSURE = {{1}};

    @Test
    void polish_reachesTheLowestPoint_fromNearby() {
        var end = Polish.of(HYPERBOLA, new double[] {0.1}, UNSURE);
        assertTrue(end.reached());
        assertTrue(end.hill());
        assertEquals(0, end.point()[0], 1e-8);
        assertEquals(1, end.metric()[0][0], 1e-4);
    }

    @Test
    void polish_staysAndSaysSo_whenAStepWouldRaiseTheValue() {
        var end = Polish.of(HYPERBOLA, new double[] {2}, UNSURE);
        assertFalse(end.reached());
        assertArrayEquals(new double[] {2}, end.point());
    }

    /** The fourth power: each step goes a third of the way, so that four do not arrive. */
    @Test
    void polish_saysThatItDidNotReach_whenTheStepsRunOut() {
        var end = Polish.of(of(x -> Math.pow(x, 4), x -> 4 * Math.pow(x, 3)), new double[] {1}, UNSURE);
        assertFalse(end.reached());
        assertEquals(16 / 81.0, end.point()[0], 1e-3);
    }

    @Test
    void polish_saysThatItDidNotReach_whereThereIsNoHill() {
        var end = Polish.of(of(x -> -x * x, x -> -2 * x), new double[] {1}, UNSURE);
        assertFalse(end.hill());
        assertFalse(end.reached());
    }

    private static Objective of(DoubleUnaryOperator value, DoubleUnaryOperator slopeAt) {
        return new Objective() {
            @Override
            public int size() {
                return 1;
            }

            @Override
            public double at(double[] point, double[] slope) {
                slope[0] = slopeAt.applyAsDouble(point[0]);
                return value.applyAsDouble(point[0]);
            }
        };
    }
}
