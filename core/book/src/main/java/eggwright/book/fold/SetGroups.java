package eggwright.book.fold;

import eggwright.book.name.SetName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.SetPicture;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Which sets are folded together, for an entry speaks of eggs of both, and what they add up to. */
final class SetGroups {
    /** Every set that is folded together with others, or was folded alone, with all of its group. */
    private final Map<SetName, SortedSet<SetName>> groups = new HashMap<>();

    /** By the first set of each group. */
    private final TreeMap<SetName, SetGroup> folded = new TreeMap<>();

    private final TreeMap<SetName, SetPicture> sets = new TreeMap<>();
    private final Set<SetName> spoilt = new HashSet<>();
    private final Set<SetName> scattered = new HashSet<>();

    void clear() {
        groups.clear();
        folded.clear();
        sets.clear();
        spoilt.clear();
        scattered.clear();
    }

    private SortedSet<SetName> group(SetName set) {
        return groups.computeIfAbsent(set, s -> new TreeSet<>(List.of(s)));
    }

    private static List<SetName> sets(Collection<Part> parts) {
        var sets = new ArrayList<SetName>(1);
        for (var part : parts) {
            if (part instanceof Part.Set it) {
                sets.add(it.set());
            }
        }
        return sets;
    }

    /** An entry came that touches these. */
    void join(Collection<Part> parts) {
        var named = sets(parts);
        for (int i = 1; i < named.size(); i++) {
            join(named.getFirst(), named.get(i));
        }
    }

    private void join(SetName one, SetName other) {
        var a = group(one);
        var b = group(other);
        if (a.first().equals(b.first())) {
            return;
        }
        forget(a);
        forget(b);
        if (a.size() < b.size()) {
            merge(b, a);
        } else {
            merge(a, b);
        }
        spoilt.add(one);
    }

    private void merge(SortedSet<SetName> into, SortedSet<SetName> fewer) {
        into.addAll(fewer);
        fewer.forEach(s -> groups.put(s, into));
    }

    private void forget(SortedSet<SetName> group) {
        var was = folded.remove(group.first());
        if (was != null) {
            was.sets().keySet().forEach(sets::remove);
        }
    }

    /** An entry went that touched these: it may have been what held them together. */
    void scatter(Collection<Part> parts) {
        var named = sets(parts);
        if (named.size() > 1) {
            scattered.addAll(named);
        }
    }

    /** Groups those sets afresh that lost an entry which held them together. */
    void rejoin(Function<Part, List<Effective>> entries, Function<Effective, Set<Part>> partsOf) {
        if (scattered.isEmpty()) {
            return;
        }
        var all = new TreeSet<SetName>();
        for (var set : scattered) {
            if (!all.contains(set)) {
                forget(group(set));
                all.addAll(group(set));
            }
        }
        all.forEach(groups::remove);
        for (var set : all) {
            entries.apply(new Part.Set(set)).forEach(entry -> join(partsOf.apply(entry)));
        }
        spoilt.addAll(all);
        scattered.clear();
    }

    void spoil(SetName set) {
        spoilt.add(set);
    }

    void refold(Function<Part, List<Effective>> entries) {
        var done = new HashSet<SetName>();
        for (var set : spoilt) {
            var group = group(set);
            if (done.add(group.first())) {
                forget(group);
                var mine = entries(group, entries);
                if (mine.isEmpty()) {
                    group.forEach(groups::remove);
                } else {
                    var now = SetFold.fold(mine);
                    folded.put(group.first(), now);
                    sets.putAll(now.sets());
                }
            }
        }
        spoilt.clear();
    }

    private static List<Effective> entries(SortedSet<SetName> group, Function<Part, List<Effective>> entries) {
        if (group.size() == 1) {
            return entries.apply(new Part.Set(group.first()));
        }
        var all = new TreeSet<Effective>();
        group.forEach(set -> all.addAll(entries.apply(new Part.Set(set))));
        return List.copyOf(all);
    }

    SortedMap<SetName, SetPicture> sets() {
        return Collections.unmodifiableSortedMap(new TreeMap<>(sets));
    }

    /** In the order of the first set of each. */
    List<EggAccount> accounts() {
        var accounts = new ArrayList<EggAccount>(folded.size());
        for (var group : folded.values()) {
            if (!group.account().parcels().isEmpty()) {
                accounts.add(group.account());
            }
        }
        return List.copyOf(accounts);
    }

    void addDiscrepancies(List<Discrepancy> to) {
        folded.values().forEach(group -> to.addAll(group.discrepancies()));
    }
}
