package eggwright.today;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.invented.season.Season;
import eggwright.invented.truth.ShippedTruths;
import eggwright.invented.truth.Truth;
import eggwright.invented.truth.TruthReading;
import eggwright.invented.truth.TruthText;
import eggwright.today.eggroom.EggRoomSheet;
import java.time.Duration;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The day sheet of an abridged picture is that of the whole, from then on. */
class AbridgedPictureTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final LocalDate FIRST_EGG = LocalDate.of(2027, Month.MARCH, 22);
    private static final int SEASON_DAYS = 170;

    /** Later moments, some beyond everything that is left out. */
    private static final List<Duration> LATER = List.of(
            Duration.ZERO,
            Duration.ofMinutes(50),
            Duration.ofHours(7),
            Duration.ofHours(31),
            Duration.ofDays(3),
            Duration.ofDays(9),
            Duration.ofDays(26),
            Duration.ofDays(70));

    static List<String> worlds() {
        return ShippedTruths.names();
    }

    private static Truth truth(String name) {
        return switch (TruthText.read(ShippedTruths.text(name).orElseThrow())) {
            case TruthReading.Read(var truth) -> truth;
            case TruthReading.Refused(var reasons) -> throw new AssertionError(reasons);
        };
    }

    @ParameterizedTest
    @MethodSource("worlds")
    void sheet_isThatOfTheWholePicture_thenAndLater(String world) {
        var ledger = Ledger.of(Season.of(truth(world), 5, FIRST_EGG).entries());
        int tasks = 0;
        for (int day = 1; day < SEASON_DAYS; day += 6) {
            var at = ZonedDateTime.of(FIRST_EGG.plusDays(day).atTime(13 + day % 9, 20), ZONE);
            var whole = ledger.asOf(at.toInstant()).picture();
            var abridged = AbridgedPicture.of(whole, at.toInstant());
            for (var later : LATER) {
                var now = at.plus(later);
                var sheet = DaySheet.of(whole, now);
                tasks += sheet.due().size();
                assertEquals(sheet, DaySheet.of(abridged.picture(), now), () -> world + ", " + at + ", " + later);
                assertEquals(EggRoomSheet.of(whole, now), EggRoomSheet.of(abridged.picture(), now));
                var again = AbridgedPicture.of(abridged.picture(), now.toInstant());
                var nextDay = now.plusHours(19);
                assertEquals(
                        DaySheet.of(whole, nextDay),
                        DaySheet.of(again.picture(), nextDay),
                        () -> "abridged twice, " + world + ", " + at + ", " + later);
            }
        }
        assertTrue(tasks > 100, "Days with work were looked at: " + tasks);
    }

    @ParameterizedTest
    @MethodSource("worlds")
    void sheet_readsTheSame_untilItSaysSo(String world) {
        var ledger = Ledger.of(Season.of(truth(world), 6, FIRST_EGG).entries());
        int turns = 0;
        for (int day = 3; day < SEASON_DAYS; day += 13) {
            var now = ZonedDateTime.of(FIRST_EGG.plusDays(day).atStartOfDay(), ZONE);
            var end = now.plusDays(2);
            var picture = ledger.asOf(now.toInstant()).picture();
            while (now.isBefore(end)) {
                var sheet = DaySheet.of(picture, now);
                var until = sheet.readsTheSameUntil();
                assertTrue(until.isAfter(now), () -> sheet.now() + " until " + until);
                for (var later : List.of(now.plusSeconds(1), now.plusHours(2), now.plusHours(7), until.minusNanos(1))) {
                    if (later.isBefore(until)) {
                        assertEquals(at(sheet, later), DaySheet.of(picture, later), () -> world + ", " + later);
                    }
                }
                now = until;
                turns++;
            }
        }
        assertTrue(turns > 26, "Days with turns were looked at: " + turns);
    }

    private static DaySheet at(DaySheet sheet, ZonedDateTime now) {
        return new DaySheet(now, sheet.overdue(), sheet.due(), sheet.coming(), sheet.notLooked(), sheet.leftOpen());
    }

    @ParameterizedTest
    @MethodSource("worlds")
    void abridgedPicture_holdsNoLooksOfSetsThatAreOver(String world) {
        var ledger = Ledger.of(Season.of(truth(world), 5, FIRST_EGG).entries());
        var left = AbridgedPicture.of(
                ledger.picture(),
                FIRST_EGG.plusDays(2 * SEASON_DAYS).atStartOfDay(ZONE).toInstant());
        assertTrue(left.picture().sets().values().stream()
                .filter(s -> !s.isRunning())
                .flatMap(s -> s.loads().values().stream())
                .allMatch(l -> l.looks().isEmpty()));
    }
}
