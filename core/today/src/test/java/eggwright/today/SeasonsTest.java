package eggwright.today;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Kept;
import eggwright.book.fold.Ledger;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.Picture;
import eggwright.invented.DemoSeason;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds on every day of an invented season, whatever its luck. The seed is the name of the case. */
class SeasonsTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final ZonedDateTime MIDSEASON = ZonedDateTime.of(2027, 6, 8, 16, 0, 0, 0, ZONE);

    private record Day(Picture picture, DaySheet sheet) {
        List<Task> tasks() {
            var all = new ArrayList<>(sheet.overdue());
            all.addAll(sheet.due());
            all.addAll(sheet.coming());
            return all;
        }
    }

    private static List<Kept> entries(long seed) {
        return DemoSeason.of(MIDSEASON.toInstant(), ZONE, seed).entries();
    }

    /** The sheets of every fifth day, as they stood then. */
    private static List<Day> days(long seed) {
        var entries = entries(seed);
        var days = new ArrayList<Day>();
        for (int back = 90; back >= 0; back -= 5) {
            var now = MIDSEASON.minusDays(back);
            var picture = Ledger.of(entries).asOf(now.toInstant()).picture();
            days.add(new Day(picture, DaySheet.of(picture, now)));
        }
        return days;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void sheet_isTheSame_inAnyOrderOfEntries(long seed) {
        var entries = entries(seed);
        var mixed = new ArrayList<>(entries);
        var chance = new SplittableRandom(seed);
        for (int i = mixed.size() - 1; i > 0; i--) {
            Collections.swap(mixed, i, chance.nextInt(i + 1));
        }
        assertEquals(
                DaySheet.of(Ledger.of(entries).picture(), MIDSEASON),
                DaySheet.of(Ledger.of(mixed).picture(), MIDSEASON));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aClosedSet_hasNoTask(long seed) {
        for (var day : days(seed)) {
            for (var task : day.tasks()) {
                task.set().ifPresent(name -> {
                    var set = day.picture().set(name).orElseThrow();
                    var end = set.takenOffAt();
                    // Within two days of the take-off, what is left may still be opened.
                    assertTrue(
                            end == null
                                    || !end.toLocalDate()
                                            .plusDays(2)
                                            .isBefore(day.sheet().today()),
                            () -> day.sheet().today() + ": " + task);
                });
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void everyTask_standsWhereItsDaysSay(long seed) {
        for (var day : days(seed)) {
            var today = day.sheet().today();
            for (var task : day.sheet().overdue()) {
                assertTrue(task.when().lastDay().isBefore(today), task::toString);
                assertEquals(Urgency.OVERDUE, task.urgency());
                assertFalse(task.kind() == TaskKind.CANDLE, "a look not taken is not overdue");
            }
            for (var task : day.sheet().due()) {
                assertFalse(task.when().firstDay().isAfter(today), task::toString);
                assertFalse(task.when().lastDay().isBefore(today), task::toString);
            }
            for (var task : day.sheet().coming()) {
                assertTrue(task.when().firstDay().isAfter(today), task::toString);
                assertFalse(task.when().firstDay().isAfter(today.plusDays(7)), task::toString);
            }
            for (var task : day.tasks()) {
                assertFalse(task.reasons().isEmpty(), task::toString);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void noTask_standsTwice(long seed) {
        for (var day : days(seed)) {
            assertEquals(day.tasks().stream().distinct().toList(), day.tasks());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void everyTrayInTheSetter_goesOverSomeDay(long seed) {
        for (var day : days(seed)) {
            var week = day.sheet().today().plusDays(7);
            for (var set : day.picture().sets().values()) {
                for (var load : set.loads().values()) {
                    // Pheasant: transfer on day 21, take-off on day 25 (TAMU-B6092, seen in a copy).
                    var due = load.setOn().plusDays(21);
                    if (load.phase() == LoadPhase.IN_SETTER
                            && isWithin(due, day.sheet().today(), week)) {
                        assertTrue(
                                day.sheet().all(TaskKind.TRANSFER).stream()
                                        .filter(t -> t.set().orElseThrow().equals(set.name()))
                                        .flatMap(t -> t.trays().stream())
                                        .anyMatch(
                                                t -> t.tray().equals(load.ref().tray())),
                                () -> day.sheet().today() + ": " + load.ref());
                    }
                }
            }
        }
    }

    private static boolean isWithin(LocalDate day, LocalDate from, LocalDate to) {
        return !day.isBefore(from) && !day.isAfter(to);
    }
}
