package eggwright.today.rule;

import eggwright.book.entry.MachineKind;
import eggwright.book.name.SetName;
import eggwright.book.picture.MachinePicture;
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
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Cleaning. A hatcher is cleaned when its last eggs were taken off (asked for up to {@value #ASKED_DAYS} days), and is
 * washed, dry and at heat a day before the next transfer. A machine that holds eggs is never asked to be cleaned.
 */
public final class MachineRules {
    /** After so many days the machine is asked for again before its next eggs. */
    private static final int ASKED_DAYS = 28;

    private MachineRules() {}

    public static List<Task> tasks(Standing standing) {
        var tasks = new ArrayList<Task>();
        for (var machine : standing.machines(MachineKind.HATCHER, MachineKind.SETTER_AND_HATCHER)) {
            cleaning(standing, machine).ifPresent(tasks::add);
        }
        tasks.addAll(hatchersReady(standing));
        return tasks;
    }

    private static Optional<Task> cleaning(Standing standing, MachinePicture machine) {
        return standing.emptiedAt(machine.machine())
                .filter(emptied -> !wasCleanedSince(standing, machine, emptied))
                .filter(emptied -> !emptied.toLocalDate().plusDays(ASKED_DAYS).isBefore(standing.today()))
                .map(emptied -> standing.task(
                        TaskKind.CLEAN_MACHINE,
                        new Span(emptied, standing.at(emptied.toLocalDate().plusDays(1), emptied.toLocalTime())),
                        Where.at(machine.machine()),
                        new Work.OfMachine(List.of(machine.machine()), List.of()),
                        List.of(Reason.Custom.of(Practice.CLEAN_AFTER_TAKE_OFF)),
                        Target.Form.of("machine-cleaned", machine.machine())));
    }

    private static boolean wasCleanedSince(Standing standing, MachinePicture machine, ZonedDateTime since) {
        var cleaned = machine.cleanedAt();
        return cleaned != null && !standing.here(cleaned).isBefore(since);
    }

    /** The day before, and until the eggs are over. Not asked where every hatcher will hold eggs, and so is at heat. */
    private static List<Task> hatchersReady(Standing standing) {
        SortedMap<LocalDate, List<Task>> transfers = new TreeMap<>();
        for (var task : HatchRules.transfers(standing)) {
            if (task.kind() == TaskKind.TRANSFER) {
                transfers
                        .computeIfAbsent(task.when().firstDay(), d -> new ArrayList<>())
                        .add(task);
            }
        }
        var hatchers = hatchers(standing);
        var tasks = new ArrayList<Task>();
        transfers.forEach((day, over) -> {
            var eve = day.minusDays(1);
            var free = hatchers.stream().filter(m -> isFree(standing, m, eve)).toList();
            // The hatcher of the first transfer holds eggs when the next ones go over.
            int most = hatchers.isEmpty() ? 1 : free.size();
            if (tasks.size() < most && free.stream().noneMatch(m -> isReady(standing, m, eve))) {
                tasks.add(ready(standing, free, eve, over));
            }
        });
        return tasks;
    }

    /** Empty, or with nothing but eggs whose take-off comes before. */
    private static boolean isFree(Standing standing, MachinePicture machine, LocalDate eve) {
        return standing.in(machine.machine()).stream()
                .noneMatch(t -> t.takeOff().toLocalDate().isAfter(eve));
    }

    private static Task ready(Standing standing, List<MachinePicture> free, LocalDate eve, List<Task> over) {
        var only = free.size() == 1 ? free.getFirst().machine() : null;
        var reasons = new ArrayList<Reason>();
        reasons.add(Reason.Custom.of(Practice.HATCHER_READY_A_DAY_BEFORE));
        over.stream().flatMap(t -> t.reasons().stream()).distinct().forEach(reasons::add);
        List<SetName> sets =
                over.stream().flatMap(t -> t.set().stream()).distinct().toList();
        return standing.task(
                TaskKind.PREPARE_HATCHER,
                new Span(standing.atWork(eve), over.getFirst().when().from()),
                new Where(only, null),
                new Work.OfMachine(free.stream().map(MachinePicture::machine).toList(), sets),
                reasons,
                new Target.Form("machine-cleaned", null, null, only, null));
    }

    private static List<MachinePicture> hatchers(Standing standing) {
        var only = standing.machines(MachineKind.HATCHER);
        return only.isEmpty() ? standing.machines(MachineKind.SETTER_AND_HATCHER) : only;
    }

    /** Empty, cleaned since its last eggs, and its thermometers read since the eve: it is at heat. */
    private static boolean isReady(Standing standing, MachinePicture machine, LocalDate eve) {
        var cleaned = machine.cleanedAt();
        return cleaned != null
                && standing.in(machine.machine()).isEmpty()
                && standing.emptiedAt(machine.machine())
                        .map(e -> wasCleanedSince(standing, machine, e))
                        .orElse(true)
                && machine.climate().stream()
                        .anyMatch(r -> r.what().dry() != null
                                && !standing.here(r.at()).toLocalDate().isBefore(eve));
    }
}
