package eggwright.today.rule;

import eggwright.book.entry.FindingCount;
import eggwright.book.name.EntryId;
import eggwright.book.picture.FarmClock;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.LookTaken;
import eggwright.book.picture.SetPicture;
import eggwright.today.schedule.FarmZone;
import eggwright.today.task.Practice;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What follows a look and a take-off: eggs taken out are disposed of by the next day; eggs kept to open, and what is
 * left after the last pull, are opened within two days, before they go off. None of it is ever overdue.
 */
public final class BenchRules {
    private static final int DAYS_TO_OPEN = 2;

    private BenchRules() {}

    public static List<Task> tasks(Standing standing) {
        var tasks = new ArrayList<Task>();
        for (var set : standing.picture().sets().values()) {
            afterLooks(standing, set, tasks);
            afterTakeOff(standing, set, tasks);
        }
        return tasks;
    }

    private static void afterLooks(Standing standing, SetPicture set, List<Task> tasks) {
        Map<LocalDate, List<LookTaken>> days = new LinkedHashMap<>();
        var recent = standing.today().minusDays(DAYS_TO_OPEN);
        Map<EntryId, LookTaken> looks = new LinkedHashMap<>();
        set.loads().values().forEach(l -> l.looks().forEach(look -> looks.putIfAbsent(look.entry(), look)));
        looks.values().stream()
                .filter(l -> set.name().equals(l.look().scope().set()))
                .filter(l -> !standing.here(l.at()).toLocalDate().isBefore(recent))
                .forEach(l -> days.computeIfAbsent(standing.here(l.at()).toLocalDate(), d -> new ArrayList<>())
                        .add(l));
        days.forEach((day, taken) -> {
            var last = taken.stream()
                    .map(l -> standing.here(l.at()))
                    .max(ZonedDateTime::compareTo)
                    .orElseThrow();
            int out = taken.stream().mapToInt(BenchRules::removed).sum();
            if (out > 0) {
                tasks.add(task(standing, TaskKind.DISPOSE, set, last, 1, out, Practice.DISPOSE_AFTER_THE_LOOK));
            }
            int toOpen = taken.stream().mapToInt(l -> waitingToBeOpened(set, l)).sum();
            if (toOpen > 0) {
                tasks.add(task(
                        standing, TaskKind.BREAK_OUT, set, last, DAYS_TO_OPEN, toOpen, Practice.OPEN_WHAT_WAS_KEPT));
            }
        });
    }

    private static void afterTakeOff(Standing standing, SetPicture set, List<Task> tasks) {
        var takenOff = set.takenOffAt();
        if (takenOff == null) {
            return;
        }
        int left = set.account().fates().stream()
                .filter(f -> f.fate() == Fate.UNACCOUNTED || f.fate() == Fate.PIPPED_ALIVE_LEFT)
                .filter(f -> f.of().ids().getFirst().load().set().equals(set.name()))
                .mapToInt(FateCount::eggs)
                .sum();
        if (left > 0) {
            tasks.add(task(
                    standing,
                    TaskKind.BREAK_OUT,
                    set,
                    standing.here(takenOff),
                    DAYS_TO_OPEN,
                    left,
                    Practice.OPEN_WHAT_IS_LEFT));
        }
    }

    private static int removed(LookTaken look) {
        return look.look().removedUnsorted()
                + look.look().findings().stream()
                        .mapToInt(FindingCount::removed)
                        .sum();
    }

    /** Kept to open, less those that a break-out has named since. */
    private static int waitingToBeOpened(SetPicture set, LookTaken look) {
        int kept = look.look().findings().stream()
                .mapToInt(FindingCount::keptToOpen)
                .sum();
        int unnamed = set.account().fates().stream()
                .filter(f -> f.fate().sort() == FateSort.LAMP && Objects.equals(f.by(), look.entry()))
                .mapToInt(FateCount::eggs)
                .sum();
        return Math.max(0, Math.min(kept, unnamed - removed(look)));
    }

    private static Task task(
            Standing standing, TaskKind kind, SetPicture set, ZonedDateTime from, int days, int eggs, Practice why) {
        int day = FarmClock.day(FarmZone.date(set.startedAt(), standing.zone()), from.toLocalDate());
        Target target =
                kind == TaskKind.BREAK_OUT ? Target.Form.of("broken-out", set.name()) : new Target.SetStory(set.name());
        return standing.task(
                kind,
                new Span(from, standing.at(from.toLocalDate().plusDays(days), from.toLocalTime())),
                Where.NOT_SAID,
                new Work.OfSet(set.name(), day, List.copyOf(set.species()), eggs),
                List.of(Reason.Custom.of(why)),
                target);
    }
}
