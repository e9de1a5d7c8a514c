package eggwright.climate.sensor;

import static eggwright.climate.reading.Logger.AIR;
import static eggwright.climate.reading.Logger.CELSIUS;
import static eggwright.climate.reading.Logger.MONDAY;
import static eggwright.climate.reading.Logger.every;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.climate.reading.Readings;
import java.util.List;
import org.junit.jupiter.api.Test;

class SiftingTest {
    @Test
    void sifting_holdsBack_whatNoSensorInGoodOrderReads() {
        var sifted = Sifting.of(AIR, every(60, 99.5, -127.0, 99.6, 185.0), List.of());
        assertEquals(2, sifted.good().count());
        assertEquals(
                List.of(
                        new Held(MONDAY.plusSeconds(60), -127.0, Doubt.IMPOSSIBLE),
                        new Held(MONDAY.plusSeconds(180), 185.0, Doubt.IMPOSSIBLE)),
                sifted.held());
    }

    @Test
    void sifting_holdsBack_aSensorThatJumps40Degrees() {
        var sifted = Sifting.of(AIR, every(60, 99.5, 139.5, 99.4), List.of());
        assertEquals(List.of(new Held(MONDAY.plusSeconds(60), 139.5, Doubt.JUMP)), sifted.held());
    }

    @Test
    void sifting_believesANewPlace_whenFiveReadingsAgree() {
        var taken = every(60, 37.5, 14.0, 14.1, 14.0, 13.9, 14.0, 14.1);
        var sifted = Sifting.of(CELSIUS, taken, List.of());
        assertEquals(4, sifted.held().size());
        assertEquals(3, sifted.good().count());
        assertEquals(14.1, sifted.good().value(2));
    }

    @Test
    void sifting_takesASlowFall_asInAPowerCut() {
        var night = new double[60];
        for (int i = 0; i < night.length; i++) {
            night[i] = 22 + 15.5 * Math.exp(-i / 12.0);
        }
        assertEquals(
                List.of(), Sifting.of(CELSIUS, every(600, night), List.of()).held());
    }

    @Test
    void sifting_takesAnythingPossible_afterALongSilence() {
        assertEquals(
                List.of(),
                Sifting.of(CELSIUS, every(601, 37.5, 10.0), List.of()).held());
    }

    /** The limit that docs/models/sensors.md names: at an open door it may be true. */
    @Test
    void sifting_takesAnythingPossible_ofALoggerThatReadsEveryQuarterOfAnHour() {
        var taken = Sifting.of(CELSIUS, every(900, 37.5, 14.0, 37.4, -127), List.of());
        assertEquals(3, taken.good().count());
        assertEquals(List.of(new Held(MONDAY.plusSeconds(2700), -127, Doubt.IMPOSSIBLE)), taken.held());
    }

    @Test
    void sifting_keepsTheNearer_ofTwoReadingsOfOneInstant() {
        var two = every(60, 37.5, 37.4).and(Readings.of(MONDAY.plusSeconds(60), 36.0));
        assertEquals(
                List.of(new Held(MONDAY.plusSeconds(60), 36.0, Doubt.SAME_INSTANT)),
                Sifting.of(CELSIUS, two, List.of()).held());
    }

    @Test
    void sifting_letsIn_whatAPersonReleased() {
        var jump = every(60, 37.5, 14.0, 37.4);
        var released = List.of(new Released(MONDAY, MONDAY.plusSeconds(90)));
        var sifted = Sifting.of(CELSIUS, jump, released);
        assertEquals(jump, sifted.good());
        assertEquals(List.of(), sifted.held());
    }

    @Test
    void sifting_dropsNothing() {
        var random = new java.util.SplittableRandom(5);
        for (int round = 0; round < 200; round++) {
            var values = random.doubles(50, -60, 160).toArray();
            var all = every(60, values);
            var sifted = Sifting.of(AIR, all, List.of());
            assertEquals(all.count(), sifted.good().count() + sifted.held().size());
        }
    }
}
