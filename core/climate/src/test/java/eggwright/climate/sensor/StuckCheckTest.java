package eggwright.climate.sensor;

import static eggwright.climate.reading.Logger.CELSIUS;
import static eggwright.climate.reading.Logger.MONDAY;
import static eggwright.climate.sensor.SteadyAir.A_DAY;
import static eggwright.climate.sensor.SteadyAir.STEP_SECONDS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.reading.Logger;
import eggwright.climate.reading.Readings;
import eggwright.climate.sensor.StuckCheck.TwinMean;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StuckCheckTest {
    private static final Duration LONGEST_STEP = Duration.ofMinutes(15);
    private static final int SEASON = 120;

    private static Optional<Stuck> check(Readings readings) {
        return StuckCheck.of(CELSIUS, readings, LONGEST_STEP, List.of());
    }

    /** Looked at every day of a season, over the last 60 days as the pages do. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.0625, 0.1, 0.125, 0.5, 1})
    void sensorInGoodOrder_isNeverCalledStuck_inASteadyMachine(double step) {
        for (long seed = 1; seed <= 60; seed++) {
            var season = new SteadyAir(seed).days(SEASON, step);
            for (int day = 1; day <= SEASON; day++) {
                var seen = days(season, Math.max(0, day - 60), day);
                assertEquals(Optional.empty(), check(seen), "seed " + seed + ", day " + day);
            }
        }
    }

    private static Readings days(Readings season, int from, int to) {
        return season.between(
                MONDAY.plus(Duration.ofDays(from)).toEpochMilli(),
                MONDAY.plus(Duration.ofDays(to)).toEpochMilli());
    }

    /** The sensor of the season above freezes after 30 days; how long until it is said? */
    @ParameterizedTest
    @CsvSource({"0.01, 60", "0.0625, 50", "0.1, 40"})
    void sensorThatFreezes_isFound_withinDays(double step, int least) {
        int found = 0;
        for (long seed = 1; seed <= 60; seed++) {
            var frozen = frozen(new SteadyAir(seed).days(30, step), 9);
            assertTrue(check(days(frozen, 0, 39)).isPresent(), "seed " + seed);
            found += check(days(frozen, 0, 32)).isPresent() ? 1 : 0;
        }
        assertTrue(found >= least, found + " of 60 were found within two days at a step of " + step);
    }

    private static Readings frozen(Readings good, int days) {
        var values = new double[good.count() + days * A_DAY];
        for (int i = 0; i < values.length; i++) {
            values[i] = good.value(Math.min(i, good.count() - 1));
        }
        return Logger.every(STEP_SECONDS, values);
    }

    @Test
    void sensorThatNeverChanged_isFoundAfterEightDays_andNotBefore() {
        var values = new double[9 * A_DAY];
        java.util.Arrays.fill(values, 85.0);
        var readings = Logger.every(STEP_SECONDS, values);
        assertEquals(Optional.empty(), check(days(readings, 0, 8)));
        var stuck = check(readings).orElseThrow();
        assertEquals(Stuck.Why.NEVER_CHANGED, stuck.why());
        assertEquals(MONDAY, stuck.from());
    }

    @Test
    void sensorThatStays_whileItsTwinSeesThePowerFail_isFoundInHours() {
        var good = new SteadyAir(3).days(3, 0.1);
        var values = new double[good.count() + 36];
        for (int i = 0; i < values.length; i++) {
            values[i] = good.value(Math.min(i, good.count() - 1));
        }
        var readings = Logger.every(STEP_SECONDS, values);
        var end = readings.at(readings.count() - 1);
        var moved = new ArrayList<TwinMean>();
        var still = new ArrayList<TwinMean>();
        for (int hour = 3; hour >= 1; hour--) {
            var from = end.minus(Duration.ofHours(hour));
            moved.add(new TwinMean(from, from.plus(Duration.ofHours(1)), 37.5 - (3 - hour) * 0.8));
            still.add(new TwinMean(from, from.plus(Duration.ofHours(1)), 37.5 - (3 - hour) * 0.1));
        }
        assertEquals(
                Optional.of(Stuck.Why.TWIN_MOVED),
                StuckCheck.of(CELSIUS, readings, LONGEST_STEP, moved).map(Stuck::why));
        assertEquals(Optional.empty(), StuckCheck.of(CELSIUS, readings, LONGEST_STEP, still));
    }

    /** It may read whole degrees: a twin that fell by two tells nothing, one that fell by four does. */
    @Test
    void sensorFrozenFromItsFirstReading_isFoundInHours_besideATwinThatMoves() {
        var readings = Logger.every(STEP_SECONDS, filled(A_DAY));
        assertEquals(
                Optional.of(Stuck.Why.TWIN_MOVED),
                StuckCheck.of(CELSIUS, readings, LONGEST_STEP, falling(4)).map(Stuck::why));
        assertEquals(Optional.empty(), StuckCheck.of(CELSIUS, readings, LONGEST_STEP, falling(2)));
    }

    /** The hourly means of a twin that falls by so much in the first hours. */
    private static List<TwinMean> falling(double by) {
        var means = new ArrayList<TwinMean>();
        for (int hour = 0; hour <= 4; hour++) {
            var from = MONDAY.plus(Duration.ofHours(hour));
            means.add(new TwinMean(from, from.plus(Duration.ofHours(1)), 37.5 - by * hour / 4));
        }
        return means;
    }

    @Test
    void silence_endsAStay_forNobodyKnowsWhatWasInIt() {
        var long1 = Logger.every(STEP_SECONDS, filled(6 * A_DAY));
        var later = new long[6 * A_DAY];
        var values = filled(6 * A_DAY);
        for (int i = 0; i < later.length; i++) {
            later[i] = MONDAY.plus(Duration.ofDays(7)).toEpochMilli() + i * 1000L * STEP_SECONDS;
        }
        assertEquals(Optional.empty(), check(long1.and(Readings.of(later, values))));
    }

    private static double[] filled(int count) {
        var values = new double[count];
        java.util.Arrays.fill(values, 37.5);
        return values;
    }
}
