package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.today.schedule.Schedule;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reminders keep the local hour across a change of the clocks. In the United States the clocks went forward on the second
 * Sunday of March (14 March 2027) and back on the first of November (7 November 2027); in Britain on the last Sundays of
 * March and October (28 March, 31 October 2027). Source: the IANA time zone database, as the JDK ships it.
 */
class ClocksTest {
    @ParameterizedTest
    @CsvSource({
        "America/Chicago,2027-03-08,2027-03-15T18:00-05:00",
        "America/Chicago,2027-11-01,2027-11-08T18:00-06:00",
        "Europe/London,2027-03-22,2027-03-29T18:00+01:00",
        "Europe/London,2027-10-25,2027-11-01T18:00Z"
    })
    void candling_isAtTheSameHour_afterTheClocksChanged(ZoneId zone, LocalDate set, ZonedDateTime look) {
        var farm = Farmhouse.in(zone, set.minusDays(10));
        farm.note(set.atTime(8, 0), setting("1", load(1, Species.PHEASANT, 54)));
        var task = farm.sheet(set.plusDays(7).atTime(9, 0)).all(TaskKind.CANDLE).getFirst();
        assertEquals(look.toInstant(), task.when().from().toInstant());
        assertEquals(18, task.when().from().getHour());
    }

    @ParameterizedTest
    @CsvSource({
        "America/Chicago,2027-03-14",
        "America/Chicago,2027-11-07",
        "Europe/London,2027-03-28",
        "Europe/London,2027-10-31"
    })
    void rounds_areAtSevenAndNineteen_onTheDayOfTheChange(ZoneId zone, LocalDate change) {
        var farm = Farmhouse.in(zone, change.minusDays(20));
        farm.note(change.minusDays(5).atTime(8, 0), setting("1", load(1, Species.PHEASANT, 54)));
        var hours = farm.sheet(change.atTime(6, 0)).all(TaskKind.DAILY_ROUND).stream()
                .map(Task::when)
                .map(w -> w.from().toLocalTime().toString())
                .toList();
        assertEquals(List.of("07:00", "19:00"), hours);
    }

    @Test
    void aDay_isOfTheFarmsCalendar_notOfTheNotersOffset() {
        var farm = Farmhouse.usual();
        // Monday evening on the farm; on the device, and for whoever asks, it is Tuesday already.
        farm.note(OffsetDateTime.parse("2027-04-06T01:00Z"), setting("1", load(1, Species.PHEASANT, 54)));
        var inGreenwich = farm.at(on("2027-04-12T21:00")).withZoneSameInstant(ZoneId.of("UTC"));
        var sheet = DaySheet.of(farm.picture(), inGreenwich);
        assertEquals(LocalDate.of(2027, 4, 12), sheet.today());
        assertEquals(
                7,
                ((eggwright.today.task.Work.OfTrays)
                                sheet.all(TaskKind.CANDLE).getFirst().work())
                        .day());
    }

    @Test
    void aFarmThatNotedNoZone_livesByTheClockOfWhoeverAsks() {
        var farm = Farmhouse.withoutZone(LocalDate.of(2027, 3, 1));
        farm.note(on("2027-04-06T01:00"), setting("1", load(1, Species.PHEASANT, 54)));
        var sheet = DaySheet.of(farm.picture(), ZonedDateTime.of(on("2027-04-12T09:00"), CHICAGO));
        assertEquals(
                "2027-04-12T18:00-05:00[America/Chicago]",
                sheet.all(TaskKind.CANDLE).getFirst().when().from().toString());
    }

    @Test
    void aFarmThatNotedUtc_livesByIt() {
        var farm = Farmhouse.in(ZoneId.of("UTC"), LocalDate.of(2027, 3, 1));
        var sheet = DaySheet.of(farm.picture(), ZonedDateTime.of(on("2027-04-12T23:00"), CHICAGO));
        assertEquals(LocalDate.of(2027, 4, 13), sheet.today());
    }

    @Test
    void schedule_ofASet_keepsTheHour_acrossTheChange() {
        var farm = Farmhouse.in(CHICAGO, LocalDate.of(2027, 3, 1));
        farm.note(on("2027-03-08T08:00"), setting("1", load(1, Species.PHEASANT, 54)));
        var picture = farm.picture();
        var dates = Schedule.of(picture.set(set("1")).orElseThrow(), picture.farm())
                .bySpecies()
                .getFirst();
        assertEquals("2027-03-08T08:00-06:00[America/Chicago]", dates.set().toString());
        assertEquals("2027-03-29T18:00-05:00[America/Chicago]", dates.transfer().toString());
        assertEquals("2027-04-02T08:00-05:00[America/Chicago]", dates.takeOff().toString());
    }
}
