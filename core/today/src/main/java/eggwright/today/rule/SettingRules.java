package eggwright.today.rule;

import eggwright.today.eggroom.EggLot;
import eggwright.today.eggroom.EggRoomSheet;
import eggwright.today.eggroom.Storage;
import eggwright.today.schedule.FarmZone;
import eggwright.today.task.Habit;
import eggwright.today.task.Practice;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Setting. On the farm's weekday; where it noted none, on the last day that the storage advice leaves to the oldest
 * eggs. Done for the day when a set went in. Overdue only while eggs wait beyond the advice. Eggs beyond the limit are
 * not asked to be set: the egg room shows them.
 */
public final class SettingRules {
    private static final LocalTime EVENING = LocalTime.of(18, 0);

    private SettingRules() {}

    public static List<Task> tasks(Standing standing) {
        var tasks = new ArrayList<Task>();
        var next = nextDay(standing);
        next.ifPresent(day -> {
            tasks.add(setting(standing, day));
            tasks.add(warming(standing, day));
        });
        var isToday = next.filter(standing.today()::equals).isPresent();
        if (!isToday) {
            overdue(standing).ifPresent(tasks::add);
        }
        return tasks;
    }

    private static Optional<LocalDate> nextDay(Standing standing) {
        var eggs = settable(standing, standing.today());
        if (eggs.isEmpty()) {
            return Optional.empty();
        }
        var isSetToday = standing.picture().sets().values().stream()
                .anyMatch(s -> FarmZone.date(s.startedAt(), standing.zone()).equals(standing.today()));
        var from = isSetToday ? standing.today().plusDays(1) : standing.today();
        var weekday = standing.habits().setWeekday();
        if (weekday != null) {
            return Optional.of(from.with(TemporalAdjusters.nextOrSame(weekday)))
                    .filter(day -> !settable(standing, day).isEmpty());
        }
        return eggs.stream()
                .map(lot -> lastAdvisedDay(standing, lot))
                .flatMap(Optional::stream)
                .filter(day -> !day.isBefore(from))
                .min(LocalDate::compareTo);
    }

    /** Those not beyond the limit on that day, which to set first. */
    private static List<EggLot> settable(Standing standing, LocalDate on) {
        return EggRoomSheet.of(standing.picture(), standing.profiles(), on).setFirst().stream()
                .filter(lot -> lot.storage() != Storage.OVER_LIMIT)
                .toList();
    }

    private static Optional<LocalDate> lastAdvisedDay(Standing standing, EggLot lot) {
        var oldest = lot.oldestDays();
        if (oldest == null) {
            return Optional.empty();
        }
        var advised = standing.profiles().of(lot.key().species()).storageAdvisedDays();
        return Optional.of(standing.today().plusDays((long) Math.floor(advised.value()) - oldest));
    }

    private static Task setting(Standing standing, LocalDate day) {
        var lots = settable(standing, day);
        return standing.task(
                TaskKind.SET_EGGS,
                Span.at(standing.at(day, standing.habits().setHour())),
                Where.NOT_SAID,
                new Work.OfEggs(lots),
                standing.habits().setWeekday() == null
                        ? advice(standing, lots)
                        : List.of(new Reason.FarmHabit(Habit.SET_WEEKDAY)),
                Target.Form.of("eggs-set"));
    }

    /** Slowly, in dry air, so that no moisture forms on the shells. */
    private static Task warming(Standing standing, LocalDate day) {
        var work = standing.habits().workHour();
        return standing.task(
                TaskKind.WARM_EGGS,
                Span.at(standing.at(day.minusDays(1), work.isBefore(EVENING) ? EVENING : work)),
                Where.NOT_SAID,
                new Work.OfEggs(settable(standing, day)),
                List.of(Reason.Custom.of(Practice.EGGS_WARM_BEFORE_SET)),
                new Target.EggRoom());
    }

    private static Optional<Task> overdue(Standing standing) {
        var waiting = settable(standing, standing.today()).stream()
                .filter(lot -> lot.storage().waitsTooLong())
                .toList();
        return waiting.stream()
                .map(lot -> lastAdvisedDay(standing, lot))
                .flatMap(Optional::stream)
                .min(LocalDate::compareTo)
                .map(day -> standing.task(
                        TaskKind.SET_EGGS,
                        Span.at(standing.at(day, standing.habits().setHour())),
                        Where.NOT_SAID,
                        new Work.OfEggs(waiting),
                        advice(standing, waiting),
                        Target.Form.of("eggs-set")));
    }

    private static List<Reason> advice(Standing standing, List<EggLot> lots) {
        return lots.stream()
                .filter(lot -> Objects.nonNull(lot.oldestDays()))
                .map(lot -> lot.key().species())
                .distinct()
                .sorted()
                .<Reason>map(species -> {
                    var advised = standing.profiles().of(species).storageAdvisedDays();
                    return new Reason.StorageAdvice(species, advised.value(), advised.source());
                })
                .toList();
    }
}
