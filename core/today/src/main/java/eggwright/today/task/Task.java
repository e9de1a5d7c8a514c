package eggwright.today.task;

import eggwright.book.name.SetName;
import eggwright.trade.caution.Place;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One piece of work. It holds names and numbers only: whoever shows it words it, by the words of its kind and reasons.
 *
 * @param reasons why now, at least one
 * @param target where it is noted when done
 */
public record Task(
        TaskKind kind, Span when, Urgency urgency, Where where, Work work, List<Reason> reasons, Target target) {
    /** Most urgent first; then by kind, hour, set, machine and section. */
    public static final Comparator<Task> MOST_URGENT_FIRST = Comparator.comparing(Task::urgency)
            .thenComparing(Task::kind)
            .thenComparing(t -> t.when().from())
            .thenComparing(t -> t.set().orElse(null), Comparator.nullsLast(Comparator.<SetName>naturalOrder()))
            .thenComparing(Task::where)
            .thenComparing(t -> t.when().to())
            .thenComparing(t -> t.target().inOrder());

    /** By day, and most urgent first within it. */
    public static final Comparator<Task> BY_DAY =
            Comparator.comparing((Task t) -> t.when().firstDay()).thenComparing(MOST_URGENT_FIRST);

    public Task {
        reasons = List.copyOf(reasons);
    }

    /** With the urgency it has at this hour. */
    public static Task of(
            TaskKind kind, Span when, ZonedDateTime now, Where where, Work work, List<Reason> reasons, Target target) {
        return new Task(kind, when, Urgency.of(kind, when, now), where, work, reasons, target);
    }

    /** The cautions that belong to this work. */
    public List<Place> cautions() {
        return kind.cautions();
    }

    /** The set it is about; empty where it is about none or several. */
    public Optional<SetName> set() {
        return switch (work) {
            case Work.OfTrays it -> Optional.of(it.set());
            case Work.OfSet it -> Optional.of(it.set());
            case Work.OfEggs it -> Optional.empty();
            case Work.OfRound it -> Optional.empty();
            case Work.OfMachine it -> Optional.empty();
            case Work.OfOrders it -> Optional.empty();
        };
    }

    /** The trays it is about; empty where it is about none. */
    public List<TrayCount> trays() {
        return work instanceof Work.OfTrays it ? it.trays() : List.of();
    }
}
