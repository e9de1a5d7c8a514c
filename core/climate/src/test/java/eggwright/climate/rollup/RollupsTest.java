package eggwright.climate.rollup;

import static eggwright.climate.reading.Logger.AIR;
import static eggwright.climate.reading.Logger.CELSIUS;
import static eggwright.climate.reading.Logger.MONDAY;
import static eggwright.climate.reading.Logger.every;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.climate.sensor.Calibration;
import eggwright.climate.sensor.Corrections;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class RollupsTest {
    private static final Band BAND = new Band(37.2, 37.8);

    @Test
    void hour_tellsLeastMeanGreatestAndTimeOutside() {
        // Four readings, a quarter of an hour apart: the second and third are too cool, for half an hour together.
        var hour = Rollups.of(CELSIUS, every(900, 37.5, 36.9, 37.1, 37.5, 37.5), Corrections.NONE, Cut.HOUR, BAND);
        assertEquals(
                new Rollup(
                        MONDAY,
                        MONDAY.plusSeconds(3600),
                        4,
                        36.9,
                        (37.5 + 36.9 + 37.1 + 37.5) / 4,
                        37.5,
                        Duration.ofHours(1),
                        Duration.ofMinutes(30)),
                hour.getFirst());
    }

    @Test
    void reading_speaksIntoTheNextStretch_untilTheNextReading() {
        // At 13:00, 13:40 and 14:20: the second speaks for 20 minutes of each hour.
        var hours = Rollups.of(CELSIUS, every(2400, 37.5, 36.0, 37.5), Corrections.NONE, Cut.HOUR, BAND);
        assertEquals(Duration.ofMinutes(20), hours.get(0).outside());
        assertEquals(Duration.ofMinutes(20), hours.get(1).outside());
    }

    @Test
    void silence_isNotTakenForTheLastReading() {
        var far =
                every(60, 36.0, 36.0, 36.0).and(eggwright.climate.reading.Readings.of(MONDAY.plusSeconds(7200), 37.5));
        var rolled = Rollups.of(CELSIUS, far, Corrections.NONE, Cut.HOUR, BAND);
        assertEquals(
                Duration.ofMinutes(2).plus(Gaps.SHORTEST), rolled.getFirst().known());
        assertEquals(List.of(new Gap(MONDAY.plusSeconds(120), MONDAY.plusSeconds(7200))), Gaps.of(far));
    }

    @Test
    void calibration_countsFromItsDayOn() {
        var corrections = new Corrections(List.of(new Calibration(MONDAY.plusSeconds(60), -0.5)));
        var minutes = Rollups.of(AIR, every(60, 99.5, 99.5), corrections, Cut.MINUTE, null);
        assertEquals(37.5, minutes.get(0).mean(), 1e-9);
        assertEquals(37.0, minutes.get(1).mean(), 1e-9);
    }

    @Test
    void day_has25Hours_whenClocksGoBack() {
        var autumn = new Cut.Days(ZoneId.of("Europe/London"));
        long start = autumn.startOf(Instant.parse("2027-10-31T12:00:00Z").toEpochMilli());
        assertEquals(Duration.ofHours(25).toMillis(), autumn.endOf(start) - start);
    }
}
