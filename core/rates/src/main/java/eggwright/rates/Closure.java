package eggwright.rates;

import eggwright.book.picture.Fate;
import eggwright.rates.NumberedAccount.Count;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;

/**
 * Parcels that a metric ties together: a count of a deciding fate that speaks of several parcels speaks of all of them
 * as one. Each closure belongs to one key, or to a joint group of keys; so every metric parts the eggs, whatever the
 * keys, and nothing is split by guess.
 */
final class Closure {
    private static final int[] NO_MEMBERS = {};

    private int[] members = NO_MEMBERS;
    private int size;
    private int counted;
    private Map<Fate, Integer> byFate = Map.of();

    /** Eggs set of its parcels. */
    int eggs;

    private Closure() {}

    /**
     * The closures of a metric. Where the counts of one closure name more eggs than its parcels held, the account
     * contradicts itself, and all of it is taken together.
     *
     * @param ties tied before; the deciding counts are tied into it
     */
    static List<Closure> of(NumberedAccount account, Ties ties, Map<Fate, List<Count>> counts, Set<Fate> deciding) {
        for (var fate : deciding) {
            for (var count : counts.getOrDefault(fate, List.of())) {
                ties.tie(count.of());
            }
        }
        var closures = built(account, ties, counts, deciding);
        for (var closure : closures) {
            if (closure.counted > closure.eggs) {
                ties.tieAll();
                return built(account, ties, counts, deciding);
            }
        }
        return closures;
    }

    private static List<Closure> built(
            NumberedAccount account, Ties ties, Map<Fate, List<Count>> counts, Set<Fate> deciding) {
        var found = new ArrayList<Closure>();
        int[] at = new int[account.parcels()];
        Arrays.fill(at, -1);
        for (int i = 0; i < at.length; i++) {
            int root = ties.rootOf(i);
            if (at[root] < 0) {
                at[root] = found.size();
                found.add(new Closure());
            }
            found.get(at[root]).add(i, account.eggs[i]);
        }
        for (var fate : deciding) {
            for (var count : counts.getOrDefault(fate, List.of())) {
                found.get(at[ties.rootOf(count.of()[0])]).add(count);
            }
        }
        return found;
    }

    private void add(int parcel, int eggsOfIt) {
        if (size == members.length) {
            members = Arrays.copyOf(members, Math.max(1, 2 * size));
        }
        members[size++] = parcel;
        eggs += eggsOfIt;
    }

    private void add(Count count) {
        if (byFate.isEmpty()) {
            byFate = new EnumMap<>(Fate.class);
        }
        byFate.merge(count.fate(), count.eggs(), Integer::sum);
        counted += count.eggs();
    }

    /** Eggs with a deciding fate. */
    int of(Fate fate) {
        return byFate.getOrDefault(fate, 0);
    }

    /** Eggs with any deciding fate. */
    int counted() {
        return counted;
    }

    int[] members() {
        return Arrays.copyOf(members, size);
    }

    boolean all(IntPredicate parcel) {
        for (int i = 0; i < size; i++) {
            if (!parcel.test(members[i])) {
                return false;
            }
        }
        return true;
    }

    boolean any(IntPredicate parcel) {
        return !all(i -> !parcel.test(i));
    }

    boolean holds(int parcel) {
        for (int i = 0; i < size; i++) {
            if (members[i] == parcel) {
                return true;
            }
        }
        return false;
    }

    /** Sum over its parcels. */
    int sum(int[] ofParcel) {
        int sum = 0;
        for (int i = 0; i < size; i++) {
            sum += ofParcel[members[i]];
        }
        return sum;
    }

    int first() {
        return members[0];
    }

    boolean hasOneKey(NumberedAccount account) {
        for (int i = 1; i < size; i++) {
            if (!account.keys[members[i]].equals(account.keys[members[0]])) {
                return false;
            }
        }
        return true;
    }

    /** Its keys, sorted, each once. */
    List<String> keys(NumberedAccount account) {
        return keys(account, members, size);
    }

    static List<String> keys(NumberedAccount account, int[] parcels, int size) {
        var first = account.keys[parcels[0]];
        for (int i = 1; i < size; i++) {
            if (!account.keys[parcels[i]].equals(first)) {
                return Keys.sorted(Arrays.stream(parcels, 0, size)
                        .mapToObj(p -> account.keys[p])
                        .toList());
            }
        }
        return List.of(first);
    }
}
