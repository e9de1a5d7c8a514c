package eggwright.today.rule;

import eggwright.book.name.SetName;
import eggwright.today.schedule.SpeciesSchedule;
import eggwright.today.task.LeftOpen;
import eggwright.today.task.Practice;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import eggwright.trade.ProfileField;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * From the last turn to the take-off. A setter is never told to stop turning or to be wetter, since it may hold eggs of
 * several ages: transfer does both. Only a machine that sets and hatches, with eggs of a single age, is told.
 */
public final class HatchRules {
    private HatchRules() {}

    public static List<Task> tasks(Standing standing) {
        var tasks = new ArrayList<Task>();
        tasks.addAll(transfers(standing));
        tasks.addAll(signs(standing));
        tasks.addAll(takeOffs(standing));
        tasks.addAll(brooders(standing));
        return tasks;
    }

    /** Done when all eggs of the tray are in the hatcher; when the hatch is over, only the take-off is asked for. */
    static List<Task> transfers(Standing standing) {
        var groups = new Grouping();
        for (var tray : standing.trays()) {
            if (!tray.isInSetter() || standing.today().isAfter(tray.takeOff().toLocalDate())) {
                continue;
            }
            var dates = tray.firstToTransfer();
            if (standing.isOneMachineOfOneAge(tray.where())) {
                add(groups, TaskKind.STOP_TURNING, tray, dates, ProfileField.LAST_TURN_DAY);
                add(groups, TaskKind.RAISE_HUMIDITY, tray, dates, ProfileField.TRANSFER_DAY);
            } else {
                add(groups, TaskKind.TRANSFER, tray, dates, ProfileField.TRANSFER_DAY);
            }
        }
        return groups.notedAs("transferred", standing);
    }

    private static void add(Grouping groups, TaskKind kind, Tray tray, SpeciesSchedule dates, ProfileField field) {
        var profile = dates.profile();
        var from = field == ProfileField.LAST_TURN_DAY ? dates.lastTurn() : dates.transfer();
        var last = kind == TaskKind.TRANSFER || dates.firstPip().isBefore(from) ? from : dates.firstPip();
        var day = field == ProfileField.LAST_TURN_DAY ? profile.lastTurnDay() : profile.transferDay();
        groups.add(
                kind,
                tray,
                dates.species(),
                new Span(from, last),
                dates.dayOf(from.toLocalDate()),
                new Reason.SpeciesDay(dates.species(), field, day.value(), day.source()));
    }

    /** First pips, then the hatch: nothing to do but to look through the glass. */
    private static List<Task> signs(Standing standing) {
        var groups = new Grouping();
        for (var tray : standing.trays()) {
            for (var dates : tray.dates()) {
                var profile = dates.profile();
                groups.add(
                        TaskKind.EXPECT_PIPS,
                        tray,
                        standing.whereItHatches(tray),
                        dates.species(),
                        new Span(dates.firstPip(), later(dates.firstPip(), dates.hatchFrom())),
                        dates.dayOf(dates.firstPip().toLocalDate()),
                        new Reason.SpeciesDay(
                                dates.species(),
                                ProfileField.FIRST_PIP_DAY,
                                profile.firstPipDay().value(),
                                profile.firstPipDay().source()));
                groups.add(
                        TaskKind.EXPECT_HATCH,
                        tray,
                        standing.whereItHatches(tray),
                        dates.species(),
                        new Span(dates.hatchFrom(), dates.hatchTo()),
                        dates.dayOf(dates.hatchFrom().toLocalDate()),
                        hatch(dates, profile.hatchWindowDays().value().low()));
            }
        }
        return groups.onlyWatched(standing);
    }

    /** Done when nothing of the tray is in a machine any more; a pull with more to come does not end it. */
    private static List<Task> takeOffs(Standing standing) {
        var groups = new Grouping();
        for (var tray : standing.trays()) {
            var dates = tray.lastToTakeOff();
            groups.add(
                    TaskKind.TAKE_OFF,
                    tray,
                    standing.whereItHatches(tray),
                    dates.species(),
                    Span.at(dates.takeOff()),
                    dates.dayOf(dates.takeOff().toLocalDate()),
                    hatch(dates, dates.profile().hatchWindowDays().value().high()));
        }
        return groups.notedAs("taken-off", standing);
    }

    private static Reason hatch(SpeciesSchedule dates, double day) {
        return new Reason.SpeciesDay(
                dates.species(),
                ProfileField.HATCH_WINDOW_DAYS,
                day,
                dates.profile().hatchWindowDays().source());
    }

    /** A day before the first chicks of a set. */
    private static List<Task> brooders(Standing standing) {
        SortedMap<SetName, List<Tray>> sets = new TreeMap<>();
        for (var tray : standing.trays()) {
            sets.computeIfAbsent(tray.setName(), s -> new ArrayList<>()).add(tray);
        }
        var tasks = new ArrayList<Task>();
        sets.forEach((set, trays) -> {
            var first = trays.stream()
                    .map(Tray::firstToHatch)
                    .min(Comparator.comparing(SpeciesSchedule::hatchFrom))
                    .orElseThrow();
            var species = new TreeSet<Species>();
            trays.forEach(t -> t.dates().forEach(d -> species.add(d.species())));
            int eggs = trays.stream()
                    .map(t -> t.load().eggsNow())
                    .filter(Objects::nonNull)
                    .mapToInt(Integer::intValue)
                    .sum();
            var from = first.hatchFrom().minusDays(1);
            tasks.add(standing.task(
                    TaskKind.WARM_BROODER,
                    new Span(from, first.hatchFrom()),
                    Where.NOT_SAID,
                    new Work.OfSet(set, first.dayOf(from.toLocalDate()), List.copyOf(species), eggs),
                    List.of(
                            Reason.Custom.of(Practice.BROODER_WARM_A_DAY_BEFORE),
                            hatch(
                                    first,
                                    first.profile().hatchWindowDays().value().low())),
                    new Target.SetStory(set)));
        });
        return tasks;
    }

    /** Sets with eggs still in a machine long after their hatch, as the book has it. */
    public static List<LeftOpen> leftOpen(Standing standing) {
        SortedMap<SetName, LocalDate> open = new TreeMap<>();
        for (var tray : standing.longOver()) {
            open.merge(tray.setName(), tray.takeOff().toLocalDate(), (a, b) -> a.isAfter(b) ? a : b);
        }
        return open.entrySet().stream()
                .map(e -> new LeftOpen(e.getKey(), e.getValue()))
                .toList();
    }

    private static ZonedDateTime later(ZonedDateTime one, ZonedDateTime other) {
        return one.isAfter(other) ? one : other;
    }
}
