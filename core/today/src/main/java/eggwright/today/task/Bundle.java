package eggwright.today.task;

import eggwright.book.name.MachineName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Work of one kind that is done in one go: on all trays of a set, at all machines, for all orders. What a keeper takes in
 * at a glance; the tasks inside say it shelf by shelf.
 *
 * @param tasks at least one, of one kind, urgency, set and day, in the order of the sheet
 */
public record Bundle(List<Task> tasks) {
    public Bundle {
        tasks = List.copyOf(tasks);
        if (tasks.isEmpty()) {
            throw new IllegalArgumentException("A bundle without work");
        }
    }

    /** What work must have in common to be done in one go. */
    private record Together(
            TaskKind kind, Urgency urgency, Optional<SetName> set, int day, Optional<ZonedDateTime> hour) {
        static Together of(Task task) {
            int day = switch (task.work()) {
                case Work.OfTrays it -> it.day();
                case Work.OfSet it -> it.day();
                case Work.OfEggs it -> 0;
                case Work.OfRound it -> 0;
                case Work.OfMachine it -> 0;
                case Work.OfOrders it -> 0;
            };
            Optional<ZonedDateTime> round = task.work() instanceof Work.OfRound
                    ? Optional.of(task.when().from())
                    : Optional.empty();
            return new Together(task.kind(), task.urgency(), task.set(), day, round);
        }
    }

    /** Bundles of these tasks, each where its first task stood; no task is lost and none stands twice. */
    public static List<Bundle> of(List<Task> tasks) {
        var together = new LinkedHashMap<Together, List<Task>>();
        for (var task : tasks) {
            together.computeIfAbsent(Together.of(task), t -> new ArrayList<>()).add(task);
        }
        return together.values().stream().map(Bundle::new).toList();
    }

    public Task first() {
        return tasks.getFirst();
    }

    public TaskKind kind() {
        return first().kind();
    }

    public Urgency urgency() {
        return first().urgency();
    }

    public Optional<SetName> set() {
        return first().set();
    }

    /** The machines it is done at, in the order of the sheet; empty where none is known. */
    public List<MachineName> machines() {
        return tasks.stream()
                .map(t -> t.where().machine())
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** Places it is done at, each once. */
    public List<Where> places() {
        return tasks.stream().map(Task::where).distinct().toList();
    }

    /** All trays, each once. */
    public List<TrayCount> trays() {
        return tasks.stream().flatMap(t -> t.trays().stream()).distinct().toList();
    }

    /**
     * Where the whole of it is noted. What only one task knows (its tray, its machine) is left out where there are
     * several.
     */
    public Target target() {
        if (tasks.size() == 1 || !(first().target() instanceof Target.Form form)) {
            return first().target();
        }
        var set =
                tasks.stream().allMatch(t -> t.target() instanceof Target.Form f && Objects.equals(f.set(), form.set()))
                        ? form.set()
                        : null;
        return new Target.Form(form.kind(), set, null, null, null);
    }

    /** Where the work on one tray is noted; empty where it is noted by no form that knows trays. */
    public static Optional<Target> of(Task task, TrayName tray) {
        return task.target() instanceof Target.Form form && form.set() != null
                ? Optional.of(new Target.Form(form.kind(), form.set(), tray, null, null))
                : Optional.empty();
    }
}
