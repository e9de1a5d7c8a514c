package eggwright.stats.interval;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class IntervalsTest {
    private static final long SEED = 20260411;
    private static final double ROUNDING = 1e-12;

    @Test
    void wilson_staysAboveZero_whenNoneOfFortyHatched() {
        var interval = Intervals.wilson95(new Rate(0, 40));
        assertEquals(0, interval.low());
        assertEquals(0.0876, interval.high(), 0.00005);
    }

    @Test
    void jeffreys_endsAtNoneAndAll_whenNoneOrAllWereFertile() {
        assertEquals(
                0, Intervals.of(new Rate(0, 54), IntervalMethod.JEFFREYS, 0.95).low());
        assertEquals(
                1, Intervals.of(new Rate(54, 54), IntervalMethod.JEFFREYS, 0.95).high());
    }

    @Test
    void agrestiCoull_isNotCut_whenItReachesBelowZero() {
        assertTrue(Intervals.of(new Rate(0, 20), IntervalMethod.AGRESTI_COULL, 0.95)
                        .low()
                < 0);
    }

    @Test
    void clopperPearson_solvesItsTailByHand_whenTheOnlyEggHatched() {
        // One of one: the lower end L has L = 0.025 exactly.
        var interval = Intervals.of(new Rate(1, 1), IntervalMethod.CLOPPER_PEARSON, 0.95);
        assertEquals(0.025, interval.low(), ROUNDING);
        assertEquals(1, interval.high());
    }

    @ParameterizedTest
    @EnumSource
    void interval_holdsItsEstimateAndMirrors_forAnyRate(IntervalMethod method) {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 400; i++) {
            long n = 1 + random.nextLong(i % 10 == 0 ? 1_000_000 : 200);
            long x = i % 7 == 0 ? 0 : i % 7 == 1 ? n : random.nextLong(n + 1);
            double level = 0.5 + 0.499 * random.nextDouble();
            var interval = Intervals.of(new Rate(x, n), method, level);
            var mirror = Intervals.of(new Rate(n - x, n), method, level);
            String where = x + " of " + n + " at " + level + ", seed " + SEED;
            if (method != IntervalMethod.AGRESTI_COULL) {
                assertTrue(0 <= interval.low() && interval.high() <= 1, where);
            }
            assertTrue(interval.holds(interval.estimate()), where);
            assertEquals(1 - mirror.high(), interval.low(), ROUNDING, where);
            assertEquals(1 - mirror.low(), interval.high(), ROUNDING, where);
        }
    }

    @ParameterizedTest
    @EnumSource
    void interval_risesWithTheCountAndWidensWithTheLevel(IntervalMethod method) {
        for (long n : new long[] {1, 2, 54, 300}) {
            for (long x = 0; x <= n; x++) {
                var interval = Intervals.of(new Rate(x, n), method, 0.9);
                var surer = Intervals.of(new Rate(x, n), method, 0.99);
                // Agresti and Coull's middle moves with the level, so that their ends need not nest when n is 1.
                boolean nests = method != IntervalMethod.AGRESTI_COULL || n > 2;
                assertTrue(
                        !nests || (surer.low() <= interval.low() && interval.high() <= surer.high()), x + " of " + n);
                if (x > 0) {
                    var before = Intervals.of(new Rate(x - 1, n), method, 0.9);
                    assertTrue(before.low() <= interval.low() && before.high() <= interval.high(), x + " of " + n);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void interval_refusesToJudge_whenNothingWasCounted(IntervalMethod method) {
        var refusal = assertThrows(OutOfRange.class, () -> Intervals.of(new Rate(0, 0), method, 0.95));
        assertTrue(refusal.toString().contains("nothing was counted"), refusal.toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 95, Double.NaN})
    void interval_refusesALevel_outsideZeroToOne(double level) {
        assertThrows(OutOfRange.class, () -> Intervals.of(new Rate(3, 4), IntervalMethod.WILSON, level));
    }

    @ParameterizedTest
    @EnumSource
    void method_isReadFromTheWordThatIsTyped(IntervalMethod method) {
        assertEquals(method, IntervalMethod.parse(method.word()));
        assertFalse(method.word().contains("_"));
    }

    @Test
    void method_listsTheWordsThereAre_whenTheWordIsUnknown() {
        var refusal = assertThrows(OutOfRange.class, () -> IntervalMethod.parse("wald"));
        assertTrue(refusal.toString().contains("wilson, jeffreys, clopper-pearson, agresti-coull"), refusal.toString());
    }
}
