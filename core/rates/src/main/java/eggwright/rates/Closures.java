package eggwright.rates;

import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Parcels that a metric ties together: a count of a deciding fate that speaks of several parcels speaks of all of them
 * as one. Each closure belongs to one key, or to a joint group of keys; so every metric parts the eggs, and nothing is
 * split by guess.
 */
final class Closures {
    private Closures() {}

    /** Eggs of a closure, and how many of them have which deciding fate. */
    static final class Sum {
        int eggs;
        final Map<Fate, Integer> fates = new HashMap<>();

        int of(Fate fate) {
            return fates.getOrDefault(fate, 0);
        }
    }

    /**
     * @param fates of the account, break-outs taken in or not
     * @param deciding the fates that decide the metric
     * @param counts parcels that enter the metric; a closure with any other is left out
     */
    static Map<String, Sum> of(
            EggAccount account,
            List<FateCount> fates,
            Set<Fate> deciding,
            Function<Parcel, String> key,
            Predicate<Parcel> counts) {
        var root = new HashMap<ParcelId, ParcelId>();
        account.parcels().keySet().forEach(id -> root.put(id, id));
        for (var fate : fates) {
            if (deciding.contains(fate.fate())) {
                var first = find(root, fate.of().ids().getFirst());
                fate.of().forEach(id -> root.put(find(root, id), first));
            }
        }
        var members = new TreeMap<ParcelId, Set<Parcel>>();
        var sums = new HashMap<ParcelId, Sum>();
        for (var parcel : account.parcels().values()) {
            var at = find(root, parcel.id());
            members.computeIfAbsent(at, r -> new java.util.HashSet<>()).add(parcel);
            sums.computeIfAbsent(at, r -> new Sum()).eggs += parcel.eggs();
        }
        for (var fate : fates) {
            if (deciding.contains(fate.fate())) {
                sums.getOrDefault(find(root, fate.of().ids().getFirst()), new Sum())
                        .fates
                        .merge(fate.fate(), fate.eggs(), Integer::sum);
            }
        }
        var found = new TreeMap<String, Sum>();
        members.forEach((at, parcels) -> {
            if (parcels.stream().allMatch(counts)) {
                var name = joint(parcels.stream().map(key).toList());
                var into = found.computeIfAbsent(name, n -> new Sum());
                var sum = sums.getOrDefault(at, new Sum());
                into.eggs += sum.eggs;
                sum.fates.forEach((fate, eggs) -> into.fates.merge(fate, eggs, Integer::sum));
            }
        });
        return found;
    }

    private static ParcelId find(Map<ParcelId, ParcelId> root, ParcelId id) {
        var at = id;
        while (true) {
            var next = root.getOrDefault(at, at);
            if (next.equals(at)) {
                return at;
            }
            at = next;
        }
    }

    /** One key, or several joined. */
    static String joint(Collection<String> keys) {
        return new TreeSet<>(keys).stream().collect(Collectors.joining("+"));
    }
}
