package eggwright.today.rule;

import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.TrayCount;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Gathers the same work on trays of one set that stand together into one task. */
final class Grouping {
    /** Compared by hand: what the language gives a record is linked anew at each start, which a person at a door waits for. */
    private record Key(TaskKind kind, SetName set, Where where, Span when, int day) {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Key key
                    && kind == key.kind
                    && day == key.day
                    && set.compareTo(key.set) == 0
                    && where.compareTo(key.where) == 0
                    && when.from().equals(key.when.from())
                    && when.to().equals(key.when.to());
        }

        @Override
        public int hashCode() {
            return (kind.word().hashCode() * 31 + set.text().hashCode()) * 31 + day;
        }
    }

    private static final class Group {
        final SortedMap<TrayName, TrayCount> trays = new TreeMap<>();
        final SortedSet<Species> species = new TreeSet<>();
        final Set<Reason> reasons = new LinkedHashSet<>();
    }

    private final Map<Key, Group> groups = new LinkedHashMap<>();

    void add(TaskKind kind, Tray tray, Species species, Span when, int day, Reason reason) {
        add(kind, tray, tray.where(), species, when, day, reason);
    }

    void add(TaskKind kind, Tray tray, Where where, Species species, Span when, int day, Reason reason) {
        var group = groups.computeIfAbsent(new Key(kind, tray.setName(), where, when, day), k -> new Group());
        group.trays.put(tray.load().ref().tray(), tray.count());
        group.species.add(species);
        group.reasons.add(reason);
    }

    /** One task for each group, noted by a form of this kind. */
    List<Task> notedAs(String form, Standing standing) {
        return tasks(standing, form);
    }

    /** One task for each group, of which nothing is noted. */
    List<Task> onlyWatched(Standing standing) {
        return tasks(standing, "");
    }

    private List<Task> tasks(Standing standing, String form) {
        var tasks = new ArrayList<Task>();
        groups.forEach((key, group) -> tasks.add(standing.task(
                key.kind(),
                key.when(),
                key.where(),
                new Work.OfTrays(key.set(), key.day(), List.copyOf(group.species), List.copyOf(group.trays.values())),
                List.copyOf(group.reasons),
                form.isEmpty() ? new Target.SetStory(key.set()) : target(form, key, group))));
        return tasks;
    }

    private static Target target(String form, Key key, Group group) {
        var only = group.trays.size() == 1 ? group.trays.firstKey() : null;
        return new Target.Form(form, key.set(), only, null, null);
    }
}
