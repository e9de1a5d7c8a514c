package eggwright.climate.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.rollup.Rollup;
import eggwright.egg.air.Ventilation;
import eggwright.units.Humidity;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class AirHistoryTest {
    private static final Instant MORNING = Instant.parse("2027-04-05T06:00:00Z");
    private static final SetPoint CUSTOM = new SetPoint(Temperature.ofCelsius(37.5), new Humidity(55));
    private static final Surroundings SEA = new Surroundings(Pressure.SEA_LEVEL, Ventilation.ASPIRATED);

    private static Rollup firstHour(double mean) {
        return new Rollup(MORNING, MORNING.plusSeconds(3600), 60, mean, mean, mean, Duration.ofHours(1), Duration.ZERO);
    }

    private static HandRead note(int hoursAfter, double dryFahrenheit, double wetFahrenheit) {
        return new HandRead(
                MORNING.plusSeconds(3600L * hoursAfter),
                Temperature.ofFahrenheit(dryFahrenheit),
                Temperature.ofFahrenheit(wetFahrenheit),
                null);
    }

    private static List<AirHour> day(AirTold told) {
        return AirHistory.of(told, CUSTOM, SEA, MORNING, MORNING.plusSeconds(24 * 3600));
    }

    private static AirTold noted(HandRead... notes) {
        return new AirTold(List.of(), List.of(), List.of(), List.of(notes));
    }

    @Test
    void hours_areWithoutGaps() {
        var hours = AirHistory.of(
                AirTold.NOTHING, CUSTOM, SEA, MORNING.plusSeconds(600), MORNING.plusSeconds(3 * 3600 + 60));
        assertEquals(4, hours.size());
        for (int i = 1; i < hours.size(); i++) {
            assertEquals(hours.get(i - 1).to(), hours.get(i).from());
        }
    }

    @Test
    void sensors_goBeforeHands_andHandsBeforeTheSetPoint() {
        var hours = day(new AirTold(List.of(firstHour(36.9)), List.of(), List.of(), List.of(note(2, 99.5, 86))));
        assertEquals(KnownBy.READINGS, hours.get(0).warmth());
        assertEquals(36.9, hours.get(0).air().temperature().celsius());
        assertEquals(KnownBy.HAND, hours.get(0).wetness());
        assertEquals(KnownBy.HAND, hours.get(1).warmth());
        assertEquals(37.5, hours.get(1).air().temperature().celsius(), 1e-9);
        var nobody = day(AirTold.NOTHING).getFirst();
        assertEquals(KnownBy.SET_POINT, nobody.warmth());
        assertEquals(55, nobody.air().humidity().pct(), 1e-9);
    }

    /** 100 °F dry and 86 °F wet are 57 %: US Weather Bureau tables, edition of 1897, whole percents. */
    @Test
    void twoThermometers_giveTheHumidityOfTheTable() {
        assertEquals(
                57, day(noted(note(1, 100, 86))).getFirst().air().humidity().pct(), 1);
    }

    @Test
    void nearestNote_speaks_andNoneForLongerThanADay() {
        var hours = AirHistory.of(
                noted(note(20, 98, 84), note(0, 99.5, 86)),
                CUSTOM,
                SEA,
                MORNING.minus(Duration.ofDays(3)),
                MORNING.plus(Duration.ofDays(3)));
        for (var hour : hours) {
            long first = Math.abs(Duration.between(MORNING, hour.from()).toHours());
            long second = Math.abs(Duration.between(MORNING.plusSeconds(20 * 3600), hour.from())
                    .toHours());
            var known = Math.min(first, second) <= AirHistory.HAND_HOURS ? KnownBy.HAND : KnownBy.SET_POINT;
            assertEquals(known, hour.warmth(), hour::toString);
            if (known == KnownBy.HAND && first != second) {
                double dry = first < second ? 99.5 : 98;
                assertEquals(dry, hour.air().temperature().fahrenheit(), 1e-6);
            }
        }
    }

    @Test
    void pairThatCannotBe_isPassedOver() {
        assertEquals(
                KnownBy.SET_POINT, day(noted(note(0, 99.5, 104))).getFirst().wetness());
    }

    @Test
    void setThatWasNeverTakenOff_isToldOfItsLastDaysOnly() {
        var hours = AirHistory.of(AirTold.NOTHING, CUSTOM, SEA, MORNING.minus(Duration.ofDays(900)), MORNING);
        assertTrue(hours.size() < 24 * 61);
        assertEquals(MORNING, hours.getLast().to());
    }
}
