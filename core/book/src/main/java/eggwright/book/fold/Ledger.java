package eggwright.book.fold;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.name.SetName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The entries of one farm, and the picture they add up to, kept up to date: adding an entry folds again only the parts
 * it touches, with the same result as folding all. Not for use by several threads at once; the pictures it gives never
 * change.
 */
public final class Ledger {
    /** A basket is used again every week: a count of a basket speaks of what went into it in these last days. */
    private static final Duration BASKET_REACH = Duration.ofDays(12);

    private final Map<EntryId, Kept> entries = new HashMap<>();
    private final Mends mends = new Mends(entries);
    private final Map<EntryId, Effective> effective = new HashMap<>();
    private final Map<EntryId, Set<Part>> touched = new HashMap<>();
    private final Map<Part, TreeSet<Effective>> byPart = new HashMap<>();
    private final Map<SetName, SortedSet<SetName>> groups = new HashMap<>();
    private final Map<SortedSet<SetName>, SetGroup> foldedGroups = new HashMap<>();
    private final FoldedParts folded = new FoldedParts();
    private final Map<BasketName, TreeSet<Effective>> intoBaskets = new HashMap<>();
    private final Map<BasketName, Set<EntryId>> basketCounts = new HashMap<>();
    private List<Discrepancy> mendDiscrepancies = List.of();
    private Set<Part> dirty = new HashSet<>();
    private Set<SetName> dirtySets = new HashSet<>();
    private boolean regroup;
    private boolean mended;

    /** A ledger of these entries; an id given twice counts once. */
    public static Ledger of(Collection<Kept> entries) {
        var ledger = new Ledger();
        ledger.addAll(entries);
        return ledger;
    }

    public void add(Kept kept) {
        addAll(List.of(kept));
    }

    public void addAll(Collection<Kept> more) {
        var roots = new LinkedHashSet<EntryId>();
        for (var kept : more) {
            var id = kept.entry().id();
            if (entries.putIfAbsent(id, kept) != null) {
                continue;
            }
            if (Mends.isMend(kept.entry().payload())) {
                mends.add(kept);
                mended = true;
            }
            roots.add(id);
        }
        for (var id : roots) {
            mends.root(id).ifPresent(this::apply);
        }
        if (mended || !mendDiscrepancies.isEmpty()) {
            mendDiscrepancies = mends.discrepancies();
            mended = false;
        }
        refold();
    }

    /** What the entries add up to. */
    public Picture picture() {
        var sets = new TreeMap<SetName, SetPicture>();
        var accounts = new TreeMap<SetName, EggAccount>();
        var setDoubts = new TreeMap<SetName, List<Discrepancy>>();
        for (var group : foldedGroups.entrySet()) {
            var first = group.getKey().first();
            sets.putAll(group.getValue().sets());
            setDoubts.put(first, group.getValue().discrepancies());
            if (!group.getValue().account().parcels().isEmpty()) {
                accounts.put(first, group.getValue().account());
            }
        }
        var discrepancies = new ArrayList<Discrepancy>(folded.discrepancies());
        setDoubts.values().forEach(discrepancies::addAll);
        discrepancies.addAll(mendDiscrepancies);
        return folded.picture(
                Collections.unmodifiableSortedMap(sets),
                List.copyOf(accounts.values()),
                List.copyOf(discrepancies),
                entries.size());
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
        return Optional.ofNullable(effective.get(id));
    }

    /** All entries that count, in the order of the fold. */
    public List<Effective> inOrder() {
        return effective.values().stream().sorted().toList();
    }

    /** All entries as first noted, mends among them, newest last. */
    public List<Kept> all() {
        return entries.values().stream()
                .sorted(java.util.Comparator.comparing(Kept::happened)
                        .thenComparing(k -> k.entry().id()))
                .toList();
    }

    /** The versions of an entry; for a mend those of the entry it mends. Empty where the book does not hold it. */
    public Optional<MendTrail> trail(EntryId id) {
        return mends.root(id).map(mends::trail);
    }

    private void apply(EntryId root) {
        var kept = entries.get(root);
        if (kept == null) {
            return;
        }
        remove(root);
        mends.effective(kept).ifPresent(now -> {
            effective.put(root, now);
            var parts = touchedBy(now);
            touched.put(root, parts);
            for (var part : parts) {
                byPart.computeIfAbsent(part, p -> new TreeSet<>()).add(now);
            }
            spoil(parts, Spoilt.ADDED);
        });
    }

    private void remove(EntryId root) {
        var was = effective.remove(root);
        var parts = touched.remove(root);
        if (was == null || parts == null) {
            return;
        }
        forgetBaskets(was);
        for (var part : parts) {
            var rest = byPart.get(part);
            if (rest != null) {
                rest.remove(was);
                if (rest.isEmpty()) {
                    byPart.remove(part);
                }
            }
        }
        spoil(parts, Spoilt.REMOVED);
    }

    private enum Spoilt {
        ADDED,
        REMOVED
    }

    private void spoil(Set<Part> parts, Spoilt how) {
        dirty.addAll(parts);
        SetName first = null;
        for (var part : parts) {
            if (part instanceof Part.Set set) {
                dirtySets.add(set.set());
                if (first == null) {
                    first = set.set();
                } else if (how == Spoilt.REMOVED) {
                    regroup = true;
                } else {
                    join(first, set.set());
                }
            }
        }
    }

    private SortedSet<SetName> group(SetName set) {
        return groups.computeIfAbsent(set, s -> new TreeSet<>(List.of(s)));
    }

    private void join(SetName one, SetName other) {
        var a = group(one);
        var b = group(other);
        if (a.equals(b)) {
            return;
        }
        foldedGroups.remove(a);
        foldedGroups.remove(b);
        var both = new TreeSet<>(a);
        both.addAll(b);
        both.forEach(s -> groups.put(s, both));
        dirtySets.addAll(both);
    }

    private void refold() {
        if (regroup) {
            regroupAll();
        }
        var again = new HashSet<SortedSet<SetName>>();
        for (var set : dirtySets) {
            again.add(group(set));
        }
        for (var group : again) {
            var mine = new TreeSet<Effective>();
            for (var set : group) {
                mine.addAll(byPart.getOrDefault(new Part.Set(set), new TreeSet<>()));
            }
            if (mine.isEmpty()) {
                foldedGroups.remove(group);
            } else {
                foldedGroups.put(group, SetFold.fold(mine));
            }
        }
        for (var part : dirty) {
            folded.refold(part, byPart.getOrDefault(part, new TreeSet<>()));
        }
        dirty = new HashSet<>();
        dirtySets = new HashSet<>();
    }

    /** An entry that held sets together went away, or a basket means other sets now: group afresh. Rare. */
    private void regroupAll() {
        regroup = false;
        groups.clear();
        foldedGroups.clear();
        for (var part : byPart.keySet()) {
            if (part instanceof Part.Set set) {
                dirtySets.add(set.set());
            }
        }
        for (var parts : touched.values()) {
            SetName first = null;
            for (var part : parts) {
                if (part instanceof Part.Set set) {
                    if (first == null) {
                        first = set.set();
                    } else {
                        join(first, set.set());
                    }
                }
            }
        }
    }

    private Set<Part> touchedBy(Effective now) {
        var parts = new LinkedHashSet<>(Touched.by(now.payload(), now.entry().origin()));
        if (now.payload() instanceof Transferred it) {
            for (var part : it.eggs()) {
                if (part.basket() != null) {
                    intoBaskets
                            .computeIfAbsent(part.basket(), b -> new TreeSet<>())
                            .add(now);
                    reapplyCountsOf(part.basket());
                }
            }
        }
        var basket = basketAlone(now);
        if (basket != null) {
            basketCounts.computeIfAbsent(basket, b -> new HashSet<>()).add(now.id());
            for (var set : setsIn(basket, now.instant())) {
                parts.add(new Part.Set(set));
            }
        }
        return parts;
    }

    private Set<SetName> setsIn(BasketName basket, Instant at) {
        var sets = new TreeSet<SetName>();
        for (var transfer : intoBaskets.getOrDefault(basket, new TreeSet<>())) {
            if (!transfer.instant().isAfter(at)
                    && !transfer.instant().isBefore(at.minus(BASKET_REACH))
                    && transfer.payload() instanceof Transferred it) {
                it.eggs().stream().filter(t -> basket.equals(t.basket())).forEach(t -> sets.add(t.set()));
            }
        }
        return sets;
    }

    /** Counts of a basket speak of whatever went into it: when that changes, they touch other sets. */
    private void reapplyCountsOf(BasketName basket) {
        for (var id : Set.copyOf(basketCounts.getOrDefault(basket, Set.of()))) {
            var now = effective.get(id);
            var parts = touched.get(id);
            if (now != null && parts != null) {
                var more = new LinkedHashSet<>(parts);
                for (var set : setsIn(basket, now.instant())) {
                    var part = new Part.Set(set);
                    more.add(part);
                    byPart.computeIfAbsent(part, p -> new TreeSet<>()).add(now);
                }
                touched.put(id, more);
                spoil(more, Spoilt.ADDED);
            }
        }
    }

    private void forgetBaskets(Effective was) {
        if (was.payload() instanceof Transferred it) {
            for (var part : it.eggs()) {
                if (part.basket() != null) {
                    intoBaskets.getOrDefault(part.basket(), new TreeSet<>()).remove(was);
                    for (var id : Set.copyOf(basketCounts.getOrDefault(part.basket(), Set.of()))) {
                        apply(id);
                    }
                }
            }
        }
        var basket = basketAlone(was);
        if (basket != null) {
            basketCounts.getOrDefault(basket, new HashSet<>()).remove(was.id());
        }
    }

    private static @org.jspecify.annotations.Nullable BasketName basketAlone(Effective entry) {
        Scope scope = switch (entry.payload()) {
            case TakenOff it -> it.counted();
            case BrokenOut it -> it.scope();
            case Looked it -> it.scope();
            default -> null;
        };
        return scope != null && scope.set() == null ? scope.basket() : null;
    }
}
