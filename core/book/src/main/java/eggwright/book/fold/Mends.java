package eggwright.book.fold;

import eggwright.book.entry.Kept;
import eggwright.book.entry.Payload;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.Withdrawn;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What.Untold;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.FarmClock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Resolves mends. Of several mends that did not see each other the greatest id shows, with a discrepancy; a mend whose
 * entry has not arrived waits; mends in a circle are void.
 */
final class Mends {
    private final Map<EntryId, Kept> all;
    private final Map<EntryId, Set<EntryId>> byTarget = new HashMap<>();

    Mends(Map<EntryId, Kept> all) {
        this.all = all;
    }

    static boolean isMend(Payload payload) {
        return payload instanceof Replaced || payload instanceof Withdrawn;
    }

    void add(Kept mend) {
        byTarget.computeIfAbsent(target(mend), t -> new TreeSet<>())
                .add(mend.entry().id());
    }

    /** Whether a mend waits for this entry, or saw it. */
    boolean concern(EntryId id) {
        return byTarget.containsKey(id);
    }

    /** The entry at the root of a mend; empty while it has not arrived or where the mends run in a circle. */
    Optional<EntryId> root(EntryId start) {
        var first = all.get(start);
        if (first == null) {
            return Optional.empty();
        }
        if (!isMend(first.entry().payload())) {
            return Optional.of(start);
        }
        var seen = new HashSet<EntryId>();
        var at = start;
        while (true) {
            if (!seen.add(at)) {
                return Optional.empty();
            }
            var kept = all.get(at);
            if (kept == null) {
                return Optional.empty();
            }
            if (!isMend(kept.entry().payload())) {
                return Optional.of(at);
            }
            at = target(kept);
        }
    }

    /** All mends of an entry, mends of mends too. */
    List<EntryId> of(EntryId root) {
        var found = new TreeSet<EntryId>();
        var open = new ArrayList<>(byTarget.getOrDefault(root, Set.of()));
        while (!open.isEmpty()) {
            var next = open.removeLast();
            if (found.add(next)) {
                open.addAll(byTarget.getOrDefault(next, Set.of()));
            }
        }
        return List.copyOf(found);
    }

    /** What an entry says now. Empty where it was withdrawn. */
    Optional<Effective> effective(Kept root, FarmClock clock) {
        var last = shown(root.entry().id());
        if (last == null) {
            return Optional.of(Effective.unmended(root, clock));
        }
        return last.entry().payload() instanceof Replaced it
                ? Optional.of(Effective.mended(root, last.entry().id(), it, clock))
                : Optional.empty();
    }

    MendTrail trail(EntryId root) {
        var last = shown(root);
        return new MendTrail(
                root,
                of(root),
                last == null ? root : last.entry().id(),
                last != null && last.entry().payload() instanceof Withdrawn
                        ? MendTrail.Standing.WITHDRAWN
                        : MendTrail.Standing.COUNTS);
    }

    private @Nullable Kept shown(EntryId root) {
        if (!byTarget.containsKey(root)) {
            return null;
        }
        var leaves = leaves(root);
        return leaves.isEmpty() ? null : all.get(leaves.getLast());
    }

    /** Mends that no other mend of the same entry has seen, by id. */
    private List<EntryId> leaves(EntryId root) {
        var mends = of(root);
        var seen = new HashSet<EntryId>();
        for (var id : mends) {
            var mend = all.get(id);
            if (mend != null && !saw(mend).equals(id)) {
                seen.add(saw(mend));
                var target = target(mend);
                if (!target.equals(root)) {
                    seen.add(target);
                }
            }
        }
        var leaves = mends.stream().filter(id -> !seen.contains(id)).toList();
        return leaves.isEmpty() && !mends.isEmpty() ? List.of(mends.getLast()) : leaves;
    }

    List<Discrepancy> discrepancies() {
        var found = new ArrayList<Discrepancy>();
        var roots = new TreeSet<EntryId>();
        var all = new TreeSet<EntryId>();
        byTarget.values().forEach(all::addAll);
        for (var id : all) {
            root(id).ifPresentOrElse(roots::add, () -> found.add(unrooted(id)));
        }
        for (var root : roots) {
            var leaves = leaves(root);
            if (leaves.size() > 1) {
                var entries = new ArrayList<EntryId>();
                entries.add(leaves.getLast());
                entries.addAll(leaves.subList(0, leaves.size() - 1));
                entries.add(root);
                found.add(new Discrepancy(
                        DiscrepancyKind.TWO_MENDS, entries, new About.Notes(), leaves.size(), 1, Untold.UNTOLD));
            }
        }
        return found;
    }

    private Discrepancy unrooted(EntryId id) {
        var seen = new TreeSet<EntryId>();
        var at = id;
        while (seen.add(at)) {
            var kept = all.get(at);
            if (kept == null) {
                return new Discrepancy(
                        DiscrepancyKind.MEND_WAITS, List.of(id, at), new About.Notes(), 0, 0, Untold.UNTOLD);
            }
            at = target(kept);
        }
        return new Discrepancy(
                DiscrepancyKind.MENDS_IN_A_CIRCLE, List.copyOf(seen), new About.Notes(), 0, 0, Untold.UNTOLD);
    }

    static EntryId target(Kept mend) {
        return switch (mend.entry().payload()) {
            case Replaced it -> it.target();
            case Withdrawn it -> it.target();
            default ->
                throw new IllegalArgumentException("Not a mend: " + mend.entry().id());
        };
    }

    private static EntryId saw(Kept mend) {
        return switch (mend.entry().payload()) {
            case Replaced it -> it.saw();
            case Withdrawn it -> it.saw();
            default ->
                throw new IllegalArgumentException("Not a mend: " + mend.entry().id());
        };
    }
}
