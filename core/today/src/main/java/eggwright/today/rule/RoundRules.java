package eggwright.today.rule;

import eggwright.book.entry.MachineKind;
import eggwright.book.entry.RoundCheck;
import eggwright.book.picture.MachinePicture;
import eggwright.today.task.Practice;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The daily rounds at each machine that holds eggs. A reading noted for the machine counts for the round whose hour is
 * nearest to it; a round that was not made is over when the next one is nearer.
 */
public final class RoundRules {
    private static final List<RoundCheck> IN_A_SETTER =
            List.of(RoundCheck.WATER_FILLED, RoundCheck.TURNER_TILTED, RoundCheck.VENTS_OPEN);
    /** Nothing turns in a hatcher. */
    private static final List<RoundCheck> IN_A_HATCHER = List.of(RoundCheck.WATER_FILLED, RoundCheck.VENTS_OPEN);

    private RoundRules() {}

    /** The part of the day that belongs to one round. */
    private record Round(ZonedDateTime hour, ZonedDateTime from, ZonedDateTime to) {
        boolean holds(ZonedDateTime at) {
            return !at.isBefore(from) && at.isBefore(to);
        }
    }

    public static List<Task> tasks(Standing standing) {
        var tasks = new ArrayList<Task>();
        var rounds = openRounds(standing);
        for (var machine : standing.machines(MachineKind.SETTER, MachineKind.HATCHER, MachineKind.SETTER_AND_HATCHER)) {
            var trays = inside(standing, machine);
            for (var round : trays.isEmpty() ? List.<Round>of() : rounds) {
                if (machine.climate().stream().noneMatch(r -> round.holds(standing.here(r.at())))) {
                    tasks.add(task(
                            standing,
                            Where.at(machine.machine()),
                            round,
                            trays,
                            Target.Form.of("climate-noted", machine.machine())));
                }
            }
        }
        var lost = standing.trays().stream()
                .filter(t ->
                        t.where().machine() == null && couldStandIn(standing, t).isEmpty())
                .toList();
        for (var round : lost.isEmpty() ? List.<Round>of() : rounds) {
            tasks.add(task(standing, Where.NOT_SAID, round, lost, Target.Form.of("climate-noted")));
        }
        return tasks;
    }

    private static Task task(Standing standing, Where where, Round round, List<Tray> trays, Target target) {
        var turning = trays.stream().anyMatch(Tray::isInSetter);
        return standing.task(
                TaskKind.DAILY_ROUND,
                new Span(round.hour(), round.to()),
                where,
                new Work.OfRound(
                        turning ? IN_A_SETTER : IN_A_HATCHER,
                        trays.stream().map(Tray::setName).distinct().toList()),
                List.of(Reason.Custom.of(Practice.DAILY_ROUNDS)),
                target);
    }

    /** Those that stand in it, and those of which only the kind of machine is known. */
    private static List<Tray> inside(Standing standing, MachinePicture machine) {
        return standing.trays().stream()
                .filter(t -> {
                    var there = t.where().machine();
                    return there == null
                            ? couldStandIn(standing, t).contains(machine)
                            : there.equals(machine.machine());
                })
                .toList();
    }

    private static List<MachinePicture> couldStandIn(Standing standing, Tray tray) {
        return standing.machines(
                tray.isInSetter() ? MachineKind.SETTER : MachineKind.HATCHER, MachineKind.SETTER_AND_HATCHER);
    }

    /** The rounds of today whose time is not over, and last night's where it is still on. */
    private static List<Round> openRounds(Standing standing) {
        var hours = new ArrayList<ZonedDateTime>();
        for (int day = -2; day <= 2; day++) {
            var date = standing.today().plusDays(day);
            standing.habits().rounds().stream().distinct().sorted().forEach(hour -> hours.add(standing.at(date, hour)));
        }
        var open = new ArrayList<Round>();
        for (int i = 1; i + 1 < hours.size(); i++) {
            var hour = hours.get(i);
            var round = new Round(hour, between(hours.get(i - 1), hour), between(hour, hours.get(i + 1)));
            var isOver = !standing.now().isBefore(round.to());
            if (!isOver && !hour.toLocalDate().isAfter(standing.today())) {
                open.add(round);
            }
        }
        return open;
    }

    private static ZonedDateTime between(ZonedDateTime earlier, ZonedDateTime later) {
        return earlier.plus(Duration.between(earlier, later).dividedBy(2));
    }
}
