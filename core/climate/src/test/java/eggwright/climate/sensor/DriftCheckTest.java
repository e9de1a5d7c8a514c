package eggwright.climate.sensor;

import static eggwright.climate.reading.Logger.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.reading.Quantity;
import eggwright.climate.sensor.DriftCheck.Difference;
import eggwright.climate.sensor.DriftCheck.Known;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class DriftCheckTest {
    private static final double TWINS = Accuracy.of(Quantity.AIR_TEMPERATURE).betweenTwins();
    private static final double HAND = Accuracy.of(Quantity.HUMIDITY).fromHand();

    private static List<Difference> hours(int days, IntToDoubleFunction byHour) {
        var hours = new ArrayList<Difference>();
        for (int hour = 0; hour < days * 24; hour++) {
            hours.add(new Difference(MONDAY.plus(Duration.ofHours(hour)), byHour.applyAsDouble(hour)));
        }
        return hours;
    }

    /** Root of the sum of squares of ±0.5 °C twice, and of ±3 % and ±5 %: E_n of 1 (ISO 13528). */
    @Test
    void tolerance_isWhereTheNormalizedErrorIsOne() {
        assertEquals(0.7071, TWINS, 5e-5);
        assertEquals(5.831, HAND, 5e-4);
    }

    /** Two places of one machine: a level of its own, waves of the day, doors, and a hatch of three days that moves one of them. */
    @Test
    void twinsInGoodOrder_raiseNoAlarm_inTwoHundredSeasons() {
        int alarms = 0;
        for (long seed = 1; seed <= 200; seed++) {
            var random = new SplittableRandom(seed);
            double level = random.nextDouble(-0.45, 0.45);
            double wave = random.nextDouble(0, 0.3);
            var scatter = new double[60];
            for (int day = 0; day < 60; day++) {
                scatter[day] = 0.08 * random.nextGaussian();
            }
            int hatch = random.nextInt(10, 55);
            var hours = hours(
                    60,
                    hour -> level
                            + wave * Math.sin(2 * Math.PI * hour / 24)
                            + scatter[hour / 24]
                            + (hour / 24 >= hatch && hour / 24 < hatch + 3 ? 0.8 : 0)
                            + (hour % 41 == 0 ? -3 : 0));
            for (int day = 7; day <= 60; day++) {
                alarms += DriftCheck.ofTwins(hours.subList(0, day * 24), TWINS, Known.NOT_BOTH_COMPARED)
                                .isPresent()
                        ? 1
                        : 0;
            }
        }
        assertEquals(0, alarms);
    }

    @Test
    void twinThatDrifts_isFound_whenItHasLeftTheTolerance() {
        // 0.03 °C a day: from the middle of the first seven to that of the last 0.71 °C lie 24 days.
        var hours = hours(40, hour -> 0.2 - 0.03 * hour / 24 + 0.05 * Math.sin(hour));
        assertEquals(Optional.empty(), DriftCheck.ofTwins(hours.subList(0, 24 * 24), TWINS, Known.NOT_BOTH_COMPARED));
        var drift = DriftCheck.ofTwins(hours.subList(0, 35 * 24), TWINS, Known.BOTH_COMPARED)
                .orElseThrow();
        assertEquals(Drift.Kind.SHIFTED, drift.kind());
        assertEquals(0.2 - 0.03 * 3, drift.before(), 0.03);
        assertEquals(0.2 - 0.03 * 31.5, drift.now(), 0.03);
    }

    /** The base moves along with the 60 days that are read: the limit that docs/models/sensors.md names. */
    @Test
    void slowDrift_ofTwinsBothCompared_isNotFound_howeverLongItGoesOn() {
        var year = hours(365, hour -> 0.013 * hour / 24);
        var faster = hours(60, hour -> 0.014 * hour / 24);
        for (int day = 60; day <= 365; day += 5) {
            var seen = year.subList((day - 60) * 24, day * 24);
            assertEquals(Optional.empty(), DriftCheck.ofTwins(seen, TWINS, Known.BOTH_COMPARED), "day " + day);
        }
        assertTrue(DriftCheck.ofTwins(faster, TWINS, Known.BOTH_COMPARED).isPresent());
        assertEquals(
                Optional.of(Drift.Kind.APART),
                DriftCheck.ofTwins(year.subList(0, 60 * 24), TWINS, Known.NOT_BOTH_COMPARED)
                        .map(Drift::kind));
    }

    @Test
    void twinsThatDifferAllTheWhile_areSaid_unlessBothWereHeldAgainstAReference() {
        var hours = hours(8, hour -> 1.1);
        assertEquals(
                Optional.of(Drift.Kind.APART),
                DriftCheck.ofTwins(hours, TWINS, Known.NOT_BOTH_COMPARED).map(Drift::kind));
        assertEquals(Optional.empty(), DriftCheck.ofTwins(hours, TWINS, Known.BOTH_COMPARED));
        assertEquals(Optional.empty(), DriftCheck.ofTwins(hours.subList(0, 5 * 24), TWINS, Known.NOT_BOTH_COMPARED));
    }

    /** Turned round, it is the same with the other sign. */
    @Test
    void drift_seenFromTheTwin_isTheSameTheOtherWay() {
        for (long seed = 1; seed <= 50; seed++) {
            var random = new SplittableRandom(seed);
            double slope = random.nextDouble(-0.06, 0.06);
            var one = hours(30, hour -> slope * hour / 24 + random.nextGaussian() * 0.1);
            var other =
                    one.stream().map(d -> new Difference(d.at(), -d.value())).toList();
            var a = DriftCheck.ofTwins(one, TWINS, Known.NOT_BOTH_COMPARED);
            var b = DriftCheck.ofTwins(other, TWINS, Known.NOT_BOTH_COMPARED);
            assertEquals(a.map(Drift::kind), b.map(Drift::kind), "seed " + seed);
            a.ifPresent(drift -> assertEquals(drift.now(), -b.orElseThrow().now(), 1e-12));
        }
    }

    private static List<Difference> byHand(double... values) {
        var notes = new ArrayList<Difference>();
        for (int i = 0; i < values.length; i++) {
            notes.add(new Difference(MONDAY.plus(Duration.ofHours(12L * i)), values[i]));
        }
        return notes;
    }

    @Test
    void sensorOffFromEveryReadingByHand_isSaid_butNotForOneOrTwo() {
        assertTrue(DriftCheck.fromHand(byHand(8, 7, 9, 6.5, 8), HAND).isPresent());
        assertTrue(DriftCheck.fromHand(byHand(8, 7, -1, 9, 6.5, 8), HAND).isPresent());
        assertEquals(Optional.empty(), DriftCheck.fromHand(byHand(8, 7, 9, 6.5), HAND), "too few");
        assertEquals(Optional.empty(), DriftCheck.fromHand(byHand(8, -7, 9, -6.5, 8), HAND), "either side");
        assertEquals(Optional.empty(), DriftCheck.fromHand(byHand(4, 5, 3, 4, 20), HAND), "within what both err");
    }

    /** Mended by a comparison it counts afresh; an old slip does not outweigh the last nine. */
    @Test
    void oldReadingsByHand_areForgotten() {
        assertEquals(
                Optional.empty(),
                DriftCheck.fromHand(byHand(20, 20, 20, 20, 20, 20, 1, -1, 2, 1, 0, 1, -2, 1, 1), HAND));
    }
}
