package eggwright.climate.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ReadingsTest {
    private static final long SEED = 71;
    private static final long DAY = 20_549;

    @Test
    void readings_areTheSame_inAnyOrderAndSentTwice() {
        for (long seed = SEED; seed < SEED + 300; seed++) {
            var random = new SplittableRandom(seed);
            var a = Logger.any(random, DAY);
            var b = Logger.any(random, DAY);
            var c = Logger.any(random, DAY);
            assertEquals(a.and(b).and(c), c.and(a.and(b)).and(b), "seed " + seed);
            assertEquals(a, a.and(a), "seed " + seed);
            assertEquals(a, a.and(Readings.NONE), "seed " + seed);
        }
    }

    @Test
    void allAtOnce_isTheSameAsOneByOne() {
        for (long seed = SEED; seed < SEED + 300; seed++) {
            var random = new SplittableRandom(seed);
            var parts = List.of(
                    Logger.any(random, DAY), Logger.any(random, DAY), Logger.any(random, DAY + random.nextInt(3)));
            var oneByOne = parts.stream().reduce(Readings.NONE, Readings::and);
            assertEquals(oneByOne, Readings.all(parts), "seed " + seed);
        }
        assertEquals(Readings.NONE, Readings.all(List.of()));
    }

    @Test
    void readings_areCutWhereTheyAreAsked() {
        var morning = Logger.every(60, 99.5, 99.6, 99.4, 99.5);
        long second = morning.millis(1);
        assertEquals(Logger.every(60, 99.5), morning.between(0, second));
        assertEquals(3, morning.between(second, Long.MAX_VALUE).count());
        assertEquals(1, morning.between(second, second + 1).count());
        assertEquals(Readings.NONE, morning.between(second + 1, second + 2));
    }

    @Test
    void day_comesBackDigitForDigit_fromItsBytes() {
        for (long seed = SEED; seed < SEED + 500; seed++) {
            var day = Logger.any(new SplittableRandom(seed), DAY);
            assertEquals(day, DayCodec.read(DAY, DayCodec.write(DAY, day)), "seed " + seed);
        }
    }

    @Test
    void day_comesBack_withMinusNoughtAndAFullDouble() {
        var odd = Logger.every(60, -0.0, 0.0, 0.1 + 0.2, 1e300);
        assertEquals(
                odd, DayCodec.read(DayCodec.dayOf(odd.millis(0)), DayCodec.write(DayCodec.dayOf(odd.millis(0)), odd)));
    }

    @Test
    void day_ofMinutesTakesAboutTwoBytesAReading() {
        var random = new SplittableRandom(SEED);
        var values = new double[600];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.rint(995 + random.nextDouble(-3, 3)) / 10;
        }
        var bytes = DayCodec.write(DayCodec.dayOf(Logger.MONDAY.toEpochMilli()), Logger.every(60, values));
        assertEquals(2.0, (double) bytes.length / values.length, 0.1);
    }
}
