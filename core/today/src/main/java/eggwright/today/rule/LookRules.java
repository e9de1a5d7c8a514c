package eggwright.today.rule;

import eggwright.book.name.SetName;
import eggwright.today.schedule.LookDay;
import eggwright.today.schedule.LooksTaken;
import eggwright.today.schedule.SpeciesSchedule;
import eggwright.today.task.Habit;
import eggwright.today.task.NotLooked;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.TrayCount;
import eggwright.today.task.Where;
import eggwright.trade.ProfileField;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Candling: due on its day, still possible for two more, then let go with a quiet line. It is done when the whole of
 * the tray was looked at in the days that count for it.
 */
public final class LookRules {
    private LookRules() {}

    public static List<Task> tasks(Standing standing) {
        var groups = new Grouping();
        for (var tray : standing.trays()) {
            for (var dates : tray.dates()) {
                for (var look : dates.looks()) {
                    if (tray.isInSetter() && !wasTaken(tray, dates, look)) {
                        var last = standing.atWork(dates.set().toLocalDate().plusDays(look.lastDay()));
                        groups.add(
                                TaskKind.CANDLE,
                                tray,
                                dates.species(),
                                new Span(look.at(), last),
                                look.day(),
                                reason(dates, look));
                    }
                }
            }
        }
        return groups.notedAs("looked", standing);
    }

    /** The looks that were not taken, until the transfer or a later look. */
    public static List<NotLooked> notTaken(Standing standing) {
        var lines = new TreeMap<SetName, SortedMap<Integer, SortedMap<Where, List<TrayCount>>>>();
        for (var tray : standing.trays()) {
            tray.dates().stream()
                    .flatMap(d -> d.looks().stream().filter(l -> tray.isInSetter() && wasMissed(standing, tray, d, l)))
                    .map(LookDay::day)
                    .distinct()
                    .forEach(day -> lines.computeIfAbsent(tray.setName(), s -> new TreeMap<>())
                            .computeIfAbsent(day, d -> new TreeMap<>())
                            .computeIfAbsent(tray.where(), w -> new ArrayList<>())
                            .add(tray.count()));
        }
        var found = new ArrayList<NotLooked>();
        lines.forEach((set, days) -> days.forEach(
                (day, places) -> places.forEach((where, trays) -> found.add(new NotLooked(set, day, where, trays)))));
        return found;
    }

    private static Reason reason(SpeciesSchedule dates, LookDay look) {
        return switch (dates.looksBy()) {
            case FARM_HABIT -> new Reason.FarmHabit(Habit.CANDLING_DAYS);
            case SPECIES ->
                new Reason.SpeciesDay(
                        dates.species(),
                        ProfileField.CANDLING_DAYS,
                        look.day(),
                        dates.profile().candlingDays().source());
        };
    }

    private static boolean wasTaken(Tray tray, SpeciesSchedule dates, LookDay look) {
        return LooksTaken.whole(tray.load(), dates, day -> day >= look.firstDay() && day <= look.lastDay());
    }

    private static boolean wasMissed(Standing standing, Tray tray, SpeciesSchedule dates, LookDay look) {
        return dates.dayOf(standing.today()) > look.lastDay()
                && !LooksTaken.whole(tray.load(), dates, day -> day >= look.firstDay());
    }
}
