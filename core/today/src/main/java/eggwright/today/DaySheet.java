package eggwright.today;

import eggwright.book.picture.Picture;
import eggwright.today.rule.BenchRules;
import eggwright.today.rule.HatchRules;
import eggwright.today.rule.LookRules;
import eggwright.today.rule.MachineRules;
import eggwright.today.rule.OrderRules;
import eggwright.today.rule.RoundRules;
import eggwright.today.rule.SettingRules;
import eggwright.today.rule.Standing;
import eggwright.today.task.LeftOpen;
import eggwright.today.task.NotLooked;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What to do today, what is overdue, and what comes next. Pure: the same picture and hour give the same sheet.
 *
 * @param now the hour it was drawn up for, in the farm's own zone
 * @param overdue whose day has passed, most urgent first
 * @param due of today, most urgent first; among them looks that are still possible
 * @param coming of the next {@value eggwright.today.rule.Standing#DAYS_AHEAD} days, day after day; without daily rounds
 * @param notLooked looks that were not taken: neither overdue nor "no loss"
 * @param leftOpen sets whose end was never noted
 */
public record DaySheet(
        ZonedDateTime now,
        List<Task> overdue,
        List<Task> due,
        List<Task> coming,
        List<NotLooked> notLooked,
        List<LeftOpen> leftOpen) {
    public DaySheet {
        overdue = List.copyOf(overdue);
        due = List.copyOf(due);
        coming = List.copyOf(coming);
        notLooked = List.copyOf(notLooked);
        leftOpen = List.copyOf(leftOpen);
    }

    /**
     * Draws up the sheet.
     *
     * @param now in any zone: the farm's own is taken where it noted one; where it did not, that of {@code now}
     */
    public static DaySheet of(Picture picture, ZonedDateTime now) {
        var standing = Standing.of(picture, now);
        var tasks = new ArrayList<Task>();
        tasks.addAll(HatchRules.tasks(standing));
        tasks.addAll(LookRules.tasks(standing));
        tasks.addAll(SettingRules.tasks(standing));
        tasks.addAll(RoundRules.tasks(standing));
        tasks.addAll(MachineRules.tasks(standing));
        tasks.addAll(OrderRules.tasks(standing));
        tasks.addAll(BenchRules.tasks(standing));
        tasks.sort(Task.MOST_URGENT_FIRST);

        var overdue = new ArrayList<Task>();
        var due = new ArrayList<Task>();
        var coming = new ArrayList<Task>();
        var horizon = standing.now().toLocalDate().plusDays(Standing.DAYS_AHEAD);
        for (var task : tasks) {
            switch (task.urgency()) {
                case OVERDUE -> overdue.add(task);
                case NOW, LATER_TODAY, STILL_POSSIBLE -> due.add(task);
                case COMING -> {
                    if (!task.when().firstDay().isAfter(horizon)) {
                        coming.add(task);
                    }
                }
                case OVER -> {
                    // Stands on no sheet.
                }
            }
        }
        coming.sort(Task.BY_DAY);
        return new DaySheet(
                standing.now(), overdue, due, coming, LookRules.notTaken(standing), HatchRules.leftOpen(standing));
    }

    public LocalDate today() {
        return now.toLocalDate();
    }

    /**
     * Until when the sheet reads the same, but for its hour, if nothing is noted: the next hour at which work of today
     * begins or is over, and midnight on the farm at the latest.
     */
    public ZonedDateTime readsTheSameUntil() {
        var until = today().plusDays(1).atStartOfDay(now.getZone());
        for (var task : due) {
            for (var turn : List.of(task.when().from(), task.when().to())) {
                if (turn.isAfter(now) && turn.isBefore(until)) {
                    until = turn;
                }
            }
        }
        return until;
    }

    /** The days to come on which there is something to do. */
    public SortedMap<LocalDate, List<Task>> comingByDay() {
        var days = new TreeMap<LocalDate, List<Task>>();
        for (var task : coming) {
            days.computeIfAbsent(task.when().firstDay(), d -> new ArrayList<>()).add(task);
        }
        return days;
    }

    /** Every task of one kind, overdue ones first. */
    public List<Task> all(TaskKind kind) {
        var all = new ArrayList<Task>();
        for (var part : List.of(overdue, due, coming)) {
            part.stream().filter(t -> t.kind() == kind).forEach(all::add);
        }
        return all;
    }
}
