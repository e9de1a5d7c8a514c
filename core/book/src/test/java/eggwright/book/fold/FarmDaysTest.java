package eggwright.book.fold;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.diary.Diary;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Replaced;
import eggwright.book.picture.FarmClock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Day n is the difference of the farm's own dates, whatever the clock of the device that noted it. */
class FarmDaysTest {
    private static final OffsetDateTime LONG_BEFORE = OffsetDateTime.parse("2027-01-04T09:00Z");

    private static HabitsNoted lives(String zone) {
        return new HabitsNoted(null, zone, null, null, null, null, null);
    }

    private static int dayOfTheLook(Diary diary) {
        return diary.picture()
                .set(set("14"))
                .orElseThrow()
                .load(Diary.tray(1))
                .orElseThrow()
                .looks()
                .getFirst()
                .day();
    }

    private static Diary lookedAt(String setAt, String lookedAt) {
        var diary = new Diary();
        diary.note(OffsetDateTime.parse(setAt), setting("14", load(1, lot("4", 40))));
        diary.note(OffsetDateTime.parse(lookedAt), look("14", 1, FindingCount.removed(Finding.CLEAR, 2)));
        return diary;
    }

    /**
     * Chicago's clocks went forward on 14 March 2027 and back on 7 November, London's forward on 28 March. Source: the
     * IANA time zone database, as the JDK ships it.
     */
    @ParameterizedTest
    @CsvSource({
        // Monday evening to next Monday noon is day 7.
        "America/Chicago, 2027-04-05T19:00-05:00, 2027-04-12T12:00-05:00, 7",
        // The look was at 20:00 on the farm; the phone, fresh from London, called it 02:00 of the next day.
        "America/Chicago, 2027-04-05T08:00-05:00, 2027-04-13T02:00+01:00, 7",
        // The set was noted from Tokyo, where it was Tuesday; on the farm it was Monday.
        "America/Chicago, 2027-04-06T09:00+09:00, 2027-04-12T12:00-05:00, 7",
        // Across both changes of the clocks, late in the evening and early in the morning.
        "America/Chicago, 2027-03-08T23:30-06:00, 2027-03-15T00:15-05:00, 7",
        "America/Chicago, 2027-11-01T00:15-05:00, 2027-11-08T23:30-06:00, 7",
        "Europe/London, 2027-03-22T23:30Z, 2027-03-28T23:30Z, 7",
        "Europe/London, 2027-03-22T23:30Z, 2027-03-28T22:30Z, 6",
        // UTC, where it was noted, is a zone like any other.
        "UTC, 2027-04-05T08:00-05:00, 2027-04-12T20:00-05:00, 8"
    })
    void day_isCountedOnTheFarmsCalendar(String zone, String setAt, String lookedAt, int day) {
        var diary = lookedAt(setAt, lookedAt);
        diary.note(LONG_BEFORE, lives(zone));
        assertEquals(day, dayOfTheLook(diary));
    }

    @Test
    void day_isOfTheNotesOwnOffset_untilTheZoneIsNoted() {
        var diary = lookedAt("2027-04-05T08:00-05:00", "2027-04-13T02:00+01:00");
        assertEquals(8, dayOfTheLook(diary));
        diary.note(day(30), lives("America/Chicago"));
        assertEquals(7, dayOfTheLook(diary));
    }

    @Test
    void everyDate_isToldAgain_whenTheZoneIsMended() {
        var diary = lookedAt("2027-04-05T08:00-05:00", "2027-04-13T02:00+01:00");
        var wrong = diary.note(LONG_BEFORE, lives("Europe/London"));
        var ledger = diary.ledger();
        assertEquals(
                LocalDate.of(2027, 4, 5),
                ledger.picture().set(set("14")).orElseThrow().setOn());
        assertEquals(8, dayOfTheLook(diary));
        diary.note(day(31), new Replaced(wrong, wrong, null, lives("America/Chicago")));
        ledger.add(diary.entries().getLast());
        assertEquals(7, dayOfTheLook(diary));
        assertEquals(diary.picture(), ledger.picture());
    }

    @Test
    void dateOfAnImportedRow_standsAsItWasWritten() {
        var diary = new Diary();
        diary.note(OffsetDateTime.parse("2026-04-06T00:00Z"), setting("1", load(1, lot("4", 40))));
        diary.note(LONG_BEFORE, lives("America/Chicago"));
        var rows = diary.entries().stream().map(FarmDaysTest::imported).toList();
        assertEquals(
                LocalDate.of(2026, 4, 6),
                Ledger.of(rows).picture().set(set("1")).orElseThrow().setOn());
    }

    private static Kept imported(Kept kept) {
        var e = kept.entry();
        return new Kept(
                new eggwright.book.entry.Entry(
                        e.id(),
                        e.farm(),
                        e.happened(),
                        e.noted(),
                        e.who(),
                        e.device(),
                        Origin.IMPORTED,
                        e.payload(),
                        1),
                kept.received(),
                Duration.ZERO);
    }

    @Test
    void clock_withoutAZone_leavesTimesAsTheyAre() {
        var time = OffsetDateTime.parse("2027-04-13T02:00+01:00");
        assertEquals(time, FarmClock.NOT_NOTED.at(time));
        assertEquals(
                LocalDate.of(2027, 4, 12),
                FarmClock.of(ZoneId.of("America/Chicago")).dateOf(time));
        assertEquals(-2, FarmClock.day(LocalDate.of(2027, 4, 5), LocalDate.of(2027, 4, 3)));
    }
}
