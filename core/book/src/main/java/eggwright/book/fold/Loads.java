package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.FarmClock;
import eggwright.book.picture.LoadRef;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The loads of a group of sets, and which of them a count speaks of. */
final class Loads {
    private final SortedMap<LoadRef, LoadState> all = new TreeMap<>();
    private final Doubts doubts;
    private final SetStories stories;

    Loads(Doubts doubts, SetStories stories) {
        this.doubts = doubts;
        this.stories = stories;
    }

    SortedMap<LoadRef, LoadState> all() {
        return all;
    }

    /** Absent where the book does not know it. */
    @Nullable LoadState get(LoadRef ref) {
        return all.get(ref);
    }

    void put(LoadState load) {
        all.put(load.ref, load);
    }

    /** The loads that a count speaks of; none, with a discrepancy, where the book does not know them. */
    List<LoadState> named(Effective entry, Scope scope) {
        var found = known(scope);
        if (scope.set() != null) {
            stories.mention(scope.set(), entry);
        } else {
            found.forEach(l -> stories.mention(l.ref.set(), entry));
        }
        if (found.isEmpty()) {
            doubts.add(DiscrepancyKind.UNKNOWN_LOAD, entry, scope);
        } else if (entry.instant().isBefore(found.getFirst().startedAt)) {
            doubts.add(DiscrepancyKind.BEFORE_THE_SET, entry, scope);
        }
        return found;
    }

    private List<LoadState> known(Scope scope) {
        if (scope.set() != null && scope.tray() != null) {
            var load = all.get(new LoadRef(scope.set(), scope.tray()));
            return load == null || !isIn(load, scope) ? List.of() : List.of(load);
        }
        var found = new ArrayList<LoadState>();
        for (var load : all.values()) {
            if (isIn(load, scope)) {
                found.add(load);
            }
        }
        return found;
    }

    private static boolean isIn(LoadState load, Scope scope) {
        return (scope.set() == null || load.ref.set().equals(scope.set()))
                && (scope.basket() == null || load.baskets.contains(scope.basket()));
    }

    static int day(LoadState load, Effective entry) {
        return FarmClock.day(load.setOn, entry.at().toLocalDate());
    }
}
