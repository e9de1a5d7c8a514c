package eggwright.book.fold;

import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.Kept;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Picture;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * The entries of one farm, and the picture they add up to, kept up to date: adding an entry folds again only the parts
 * it touches, with the same result as folding all. Not for use by several threads at once; the pictures it gives never
 * change.
 */
public final class Ledger {
    private final Map<EntryId, Kept> entries;
    private final Map<EntryId, Counts> counting;
    private final Mends mends;
    private final Chronicle chronicle = new Chronicle();
    private final Map<Part, Run> runs = new HashMap<>();
    private final SetGroups groups = new SetGroups();
    private final FoldedParts folded = new FoldedParts();
    private final Baskets baskets = new Baskets();
    private final Clocks clocks = new Clocks();
    private final Set<Part> dirty = new HashSet<>();
    private List<Discrepancy> mendDiscrepancies = List.of();

    /** An entry that counts, and the parts that it touches. */
    private record Counts(Effective now, Set<Part> parts) {}

    /** A ledger without entries. */
    public Ledger() {
        this(0);
    }

    private Ledger(int expected) {
        entries = LinkedHashMap.newLinkedHashMap(expected);
        counting = HashMap.newHashMap(expected);
        mends = new Mends(entries);
    }

    /** A ledger of these entries; an id given twice counts once. */
    public static Ledger of(Collection<Kept> entries) {
        var ledger = new Ledger(entries.size());
        ledger.addAll(entries);
        return ledger;
    }

    public void add(Kept kept) {
        addAll(List.of(kept));
    }

    public void addAll(Collection<Kept> more) {
        var fresh = new ArrayList<Kept>(more.size());
        var mended = Mended.NOT;
        for (var kept : more) {
            var id = kept.entry().id();
            if (entries.putIfAbsent(id, kept) != null) {
                continue;
            }
            chronicle.add(kept);
            if (Mends.isMend(kept.entry().payload())) {
                mends.add(kept);
                mended = Mended.ANEW;
            } else if (mends.concern(id)) {
                mended = Mended.ANEW;
            }
            fresh.add(kept);
        }
        switch (mended) {
            case NOT -> takeIn(fresh, this::take);
            case ANEW -> {
                takeIn(roots(fresh), kept -> apply(kept.entry().id()));
                mendDiscrepancies = mends.discrepancies();
            }
        }
        refold();
    }

    private enum Mended {
        NOT,
        ANEW
    }

    /** Goes by the entries at hand: in a great book each is far away in memory, and looking it up again is felt. */
    private void takeIn(List<Kept> roots, Consumer<Kept> taking) {
        int turns = clocks.turns();
        // What sets the farm's clock comes first, so that the rest is told by it at once.
        for (var kept : roots) {
            if (speaksOfTheFarm(kept)) {
                taking.accept(kept);
            }
        }
        turns = tellAgain(turns);
        for (var kept : roots) {
            if (!speaksOfTheFarm(kept)) {
                taking.accept(kept);
            }
        }
        tellAgain(turns);
    }

    private List<Kept> roots(List<Kept> fresh) {
        var roots = new LinkedHashSet<EntryId>();
        fresh.forEach(kept -> mends.root(kept.entry().id()).ifPresent(roots::add));
        return roots.stream().flatMap(root -> entry(root).stream()).toList();
    }

    private static boolean speaksOfTheFarm(Kept kept) {
        return kept.entry().payload() instanceof HabitsNoted;
    }

    /** Where the farm's zone was noted anew, every date is told anew. */
    private int tellAgain(int turnsBefore) {
        if (clocks.turns() != turnsBefore) {
            var all = List.copyOf(counting.keySet());
            dirty.addAll(runs.keySet());
            runs.clear();
            counting.clear();
            groups.clear();
            baskets.clear();
            all.forEach(this::apply);
        }
        return clocks.turns();
    }

    /** What the entries add up to. */
    public Picture picture() {
        var discrepancies = new ArrayList<Discrepancy>(folded.discrepancies());
        groups.addDiscrepancies(discrepancies);
        discrepancies.addAll(mendDiscrepancies);
        return folded.picture(groups.sets(), groups.accounts(), List.copyOf(discrepancies), entries.size());
    }

    /** The ledger of what was known at an instant. */
    public Ledger asOf(Instant instant) {
        return of(entries.values().stream()
                .filter(k -> !k.knownFrom().isAfter(instant))
                .toList());
    }

    /** The ledger of some of the entries. */
    public Ledger of(Predicate<Kept> chosen) {
        return of(entries.values().stream().filter(chosen).toList());
    }

    public Optional<Kept> entry(EntryId id) {
        return Optional.ofNullable(entries.get(id));
    }

    public int size() {
        return entries.size();
    }

    /** What an entry says now, mends taken in; empty where it was withdrawn, is a mend, or is not in the book. */
    public Optional<Effective> effective(EntryId id) {
        return Optional.ofNullable(counting.get(id)).map(Counts::now);
    }

    /** All entries that count, in the order of the fold. */
    public List<Effective> inOrder() {
        return counting.values().stream().map(Counts::now).sorted().toList();
    }

    /** All entries as first noted, mends among them, in the order in which they came. */
    public List<Kept> all() {
        return List.copyOf(entries.values());
    }

    /**
     * Entries as first noted, mends among them, those that happened last first.
     *
     * @param from how many to pass over
     * @param most how many at most
     */
    public List<Kept> newestFirst(int from, int most) {
        return chronicle.newestFirst(entries.values(), from, most);
    }

    /** The versions of an entry; for a mend those of the entry it mends. Empty where the book does not hold it. */
    public Optional<MendTrail> trail(EntryId id) {
        return mends.root(id).map(mends::trail);
    }

    /** Takes in anew what an entry says now. */
    private void apply(EntryId root) {
        remove(root);
        entry(root).ifPresent(this::take);
    }

    private void take(Kept root) {
        var now = mends.effective(root, clocks.clock()).orElse(null);
        if (now == null) {
            return;
        }
        clocks.add(now);
        var parts = baskets.touchedBy(now);
        counting.put(now.id(), new Counts(now, parts));
        for (var part : parts) {
            runs.computeIfAbsent(part, p -> new Run()).add(now);
        }
        dirty.addAll(parts);
        groups.join(parts);
        baskets.add(now).forEach(this::apply);
    }

    private void remove(EntryId root) {
        var was = counting.remove(root);
        if (was == null) {
            return;
        }
        clocks.remove(was.now());
        for (var part : was.parts()) {
            var run = runs.get(part);
            if (run != null) {
                run.remove(was.now());
            }
        }
        dirty.addAll(was.parts());
        groups.scatter(was.parts());
        baskets.remove(was.now()).forEach(this::apply);
    }

    private void refold() {
        groups.rejoin(this::entriesOf, this::partsOf);
        for (var part : dirty) {
            var run = runs.get(part);
            if (part instanceof Part.Set set) {
                groups.spoil(set.set());
            } else {
                folded.refold(part, run == null ? new Run() : run);
            }
            if (run != null && run.isEmpty()) {
                runs.remove(part);
            }
        }
        groups.refold(this::entriesOf);
        dirty.clear();
    }

    private List<Effective> entriesOf(Part part) {
        var run = runs.get(part);
        return run == null ? List.of() : run.inOrder();
    }

    private Set<Part> partsOf(Effective entry) {
        var counts = counting.get(entry.id());
        return counts == null ? Set.of() : counts.parts();
    }
}
