package eggwright.climate.development;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.trade.table.CsvTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DevelopmentTest {
    private static final Instant SET = Instant.parse("2027-04-05T13:00:00Z");
    private static final double REFERENCE = 37.5;
    private static final double MINUTE_OF_DAY = 1 / 1440.0;

    private static List<Map<String, String>> rows(String kind) {
        try (var file = DevelopmentTest.class.getResourceAsStream("/eggwright/climate/development_rate.csv")) {
            if (file == null) {
                throw new IllegalStateException("development_rate.csv is missing");
            }
            return CsvTable.of(new String(file.readAllBytes(), StandardCharsets.UTF_8)).rows().stream()
                    .filter(row -> kind.equals(row.get("row_kind")))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Instant day(double days) {
        return SET.plusSeconds(Math.round(days * 86_400));
    }

    private static double days(Instant at) {
        return Duration.between(SET, at).toMillis() / 86_400_000.0;
    }

    private static Clock clock(double period, double ahead, Warmth... eggs) {
        return new Clock(SET, period, REFERENCE, List.of(eggs), ahead);
    }

    /** Rows of kind model_rate; to the digits printed. */
    @Test
    void rate_isThatOfTheModel_whereItIsMadeFor() {
        var rows = rows("model_rate");
        assertEquals(7, rows.size());
        for (var row : rows) {
            double t = Double.parseDouble(row.getOrDefault("temperature_C", ""));
            assertEquals(
                    Double.parseDouble(row.getOrDefault("relative_rate", "")),
                    DevelopmentRate.at(t, REFERENCE, 0).likely(),
                    1e-5,
                    row.toString());
        }
    }

    /** Birchard, SICB annual-meeting abstract: 23.2 days at 37.5 °C; 24.8 with 14 days at 35.5 °C. Printed to 0.1 day. */
    @Test
    void bobwhite_isLate_asPublished_afterTwoCoolWeeks() {
        assertEquals(23.2, days(clock(23.2, 37.5).reaches(1, Clock.Pace.LIKELY)), MINUTE_OF_DAY);
        var cool = clock(23.2, 37.5, new Warmth(SET, day(14), 35.5));
        assertEquals(24.8, days(cool.reaches(1, Clock.Pace.LIKELY)), 0.05);
    }

    /** Wells-Berlin, Prince and Arnold 2005, Condor 107:926: a day sooner at 38.3 °C, on few eggs: half a day either way. */
    @Test
    void mallard_isADaySooner_asPublished_whenWarmer() {
        assertEquals(-1, days(clock(26, 38.3).reaches(1, Clock.Pace.LIKELY)) - 26, 0.5);
    }

    /**
     * Feast and others 1998 (abstract seen): two spells at 22 °C, 60 hours together, suspended growth. The clock then
     * loses those hours.
     */
    @Test
    void chick_losesTheHoursOfTheCold() {
        var cooled = clock(21, 37.5, new Warmth(day(3), day(4.5), 22), new Warmth(day(10), day(11), 22));
        assertEquals(21 + 2.5, days(cooled.reaches(1, Clock.Pace.LIKELY)), MINUTE_OF_DAY);
        // By the straight line growth would have gone on at a ninth: the earliest that the clock allows.
        assertTrue(days(cooled.reaches(1, Clock.Pace.FAST)) > 21 + 2);
    }

    /** Red-legged partridge, hatching-phase trial: 37.0, 37.4 or 37.8 °C in the last three of 23.2 days made no difference. */
    @Test
    void lastDays_mayMatterNotAtAll() {
        var cooler = new Clock(SET, 23.2, 37.8, List.of(new Warmth(SET, day(20.2), 37.8)), 37.0);
        assertEquals(23.2, days(cooler.reaches(1, Clock.Pace.FAST)), 0.05);
        assertTrue(days(cooler.reaches(1, Clock.Pace.LIKELY)) > 23.2);
    }

    @Test
    void warmerEggs_areNeverLater_whereTheModelIsMadeFor() {
        double before = Double.POSITIVE_INFINITY;
        for (double t = 20; t <= 39; t += 0.25) {
            double now = days(clock(24, t).reaches(1, Clock.Pace.LIKELY));
            assertTrue(now <= before, "at " + t);
            before = now;
        }
    }

    @Test
    void clock_isAtHalf_halfWayThrough() {
        assertEquals(0.5, clock(24, 37.5).at(day(12), Clock.Pace.LIKELY), 1e-6);
    }

    @Test
    void freshEggs_atTheHandbooksTemperature_hatchByTheCalendar() {
        var pheasant = SpeciesProfile.of(Species.PHEASANT);
        var expected = HatchClock.of(
                pheasant, SET, day(10), List.of(), pheasant.setterTemperature().value(), 1, Learnt.NOTHING);
        assertEquals(HatchClock.middleDays(pheasant), days(expected.middle().likely()), MINUTE_OF_DAY);
        assertEquals(pheasant.firstPipDay().value(), days(expected.firstPip().likely()), MINUTE_OF_DAY);
        assertEquals(0, expected.hoursLater().likely(), 0.1);
        assertTrue(expected.hoursLater().low() < -10 && expected.hoursLater().high() > 10, expected.toString());
    }

    @Test
    void storedEggs_areAnHourLaterForEachDayBeyondTheFirst() {
        var pheasant = SpeciesProfile.of(Species.PHEASANT);
        var setter = pheasant.setterTemperature().value();
        var expected = HatchClock.of(pheasant, SET, SET, List.of(), setter, 7, Learnt.NOTHING);
        assertEquals(6, expected.hoursLater().likely(), 0.1);
    }

    @Test
    void coolMachine_delays_asTheConstantOfTheModelSays() {
        // 1.37 hours for each degree and day: one degree for ten days, of a bird kept at 37.5.
        var cool = clock(24, 37.5, new Warmth(SET, day(10), 36.5));
        assertEquals(13.7, 24 * (days(cool.reaches(1, Clock.Pace.LIKELY)) - 24), 0.1);
    }
}
