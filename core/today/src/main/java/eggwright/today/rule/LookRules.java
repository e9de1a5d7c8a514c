package eggwright.today.rule;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.picture.LookTaken;
import eggwright.today.schedule.FarmZone;
import eggwright.today.schedule.LookDay;
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
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

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
        return isWhole(tray, looks(tray, dates, day -> day >= look.firstDay() && day <= look.lastDay()));
    }

    private static boolean wasMissed(Standing standing, Tray tray, SpeciesSchedule dates, LookDay look) {
        return dates.dayOf(standing.today()) > look.lastDay()
                && !isWhole(tray, looks(tray, dates, day -> day >= look.firstDay()));
    }

    private static List<LookTaken> looks(Tray tray, SpeciesSchedule dates, IntPredicate days) {
        var zone = dates.set().getZone();
        return tray.load().looks().stream()
                .filter(l -> days.test(dates.dayOf(FarmZone.date(l.at(), zone))))
                .toList();
    }

    /** All eggs at once, or in parts that add up, or pen after pen. */
    private static boolean isWhole(Tray tray, List<LookTaken> looks) {
        if (looks.stream().anyMatch(l -> l.look().scope().pen() == null && l.lookedAt() >= l.inTheLoad())) {
            return true;
        }
        var parts = looks.stream()
                .filter(l -> l.look().scope().pen() == null && l.look().scope().tray() != null)
                .toList();
        int most = parts.stream().mapToInt(LookTaken::inTheLoad).max().orElse(Integer.MAX_VALUE);
        if (parts.stream().mapToInt(LookTaken::lookedAt).sum() >= most) {
            return true;
        }
        var pens = tray.load().parcels().stream()
                .map(p -> p.lot().pen())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        var seen = new HashSet<PenName>();
        for (var look : looks) {
            var pen = look.look().scope().pen();
            if (pen != null && look.lookedAt() >= look.inTheLoad()) {
                seen.add(pen);
            }
        }
        return !pens.isEmpty() && seen.containsAll(pens);
    }
}
