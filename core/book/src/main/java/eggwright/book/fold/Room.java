package eggwright.book.fold;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * How many more eggs can be of some of the holders (parcels, or spots), when each holder had so many eggs and other
 * counts, each of some of the holders together, have their place too. Finds a largest flow from counts to holders by
 * augmenting paths (L. R. Ford and D. R. Fulkerson, "Maximal flow through a network", Canadian Journal of Mathematics 8,
 * 1956; from memory). Small numbers of each: a few trays.
 */
final class Room<K> {
    /** So many eggs, all of these holders together. */
    record Count<K>(List<K> of, int eggs) {}

    private final List<Count<K>> counts;
    private final ToIntFunction<K> held;

    Room(List<Count<K>> counts, ToIntFunction<K> held) {
        this.counts = counts;
        this.held = held;
    }

    /** Eggs, at most {@code most}, that can be of these holders beside all the counts. */
    int beside(Collection<K> of, int most) {
        var numbers = new LinkedHashMap<K, Integer>();
        var near = near(of, numbers);
        var flow = new Flow(capacities(numbers), near.size() + 1);
        for (var count : near) {
            flow.place(numbers(count.of(), numbers), count.eggs());
        }
        return flow.place(numbers(of, numbers), most);
    }

    /**
     * The counts that share a holder with these, or with one that does, and so on, those of few holders first, so that
     * they hardly ever have to make room; numbers their holders.
     */
    private List<Count<K>> near(Collection<K> of, Map<K, Integer> numbers) {
        var byHolder = new HashMap<K, List<Integer>>();
        var all = alikeTogether();
        for (int i = 0; i < all.size(); i++) {
            for (var holder : all.get(i).of()) {
                byHolder.computeIfAbsent(holder, k -> new ArrayList<>()).add(i);
            }
        }
        var near = new ArrayList<Count<K>>();
        var taken = new BitSet();
        var open = new ArrayDeque<K>();
        of.forEach(holder -> see(holder, numbers, open));
        while (!open.isEmpty()) {
            for (int i : byHolder.getOrDefault(open.remove(), List.of())) {
                if (!taken.get(i)) {
                    taken.set(i);
                    near.add(all.get(i));
                    all.get(i).of().forEach(holder -> see(holder, numbers, open));
                }
            }
        }
        near.sort(Comparator.comparingInt(count -> count.of().size()));
        return near;
    }

    private static <K> void see(K holder, Map<K, Integer> numbers, ArrayDeque<K> open) {
        if (numbers.putIfAbsent(holder, numbers.size()) == null) {
            open.add(holder);
        }
    }

    /** Counts of the same holders are as one. */
    private List<Count<K>> alikeTogether() {
        var eggs = new LinkedHashMap<List<K>, Integer>();
        for (var count : counts) {
            if (count.eggs() > 0) {
                eggs.merge(count.of(), count.eggs(), Integer::sum);
            }
        }
        var all = new ArrayList<Count<K>>(eggs.size());
        eggs.forEach((of, sum) -> all.add(new Count<>(of, sum)));
        return all;
    }

    private int[] capacities(Map<K, Integer> numbers) {
        int[] capacities = new int[numbers.size()];
        numbers.forEach((k, i) -> capacities[i] = held.applyAsInt(k));
        return capacities;
    }

    private static <K> int[] numbers(Collection<K> of, Map<K, Integer> numbers) {
        int[] found = new int[of.size()];
        int i = 0;
        for (var holder : of) {
            found[i++] = numbers.getOrDefault(holder, 0);
        }
        return found;
    }

    /** Which count has how many of its eggs at which holder. */
    private static final class Flow {
        private static final int UNSEEN = -2;
        private static final int FROM_THE_COUNT = -1;

        private final int[] free;
        private final int[][] at;
        private final List<int[]> holders = new ArrayList<>();

        Flow(int[] capacities, int counts) {
            free = capacities;
            at = new int[counts][capacities.length];
        }

        /** Gives how many of the eggs found a place; eggs placed before may change places but never lose one. */
        int place(int[] of, int eggs) {
            int count = holders.size();
            holders.add(of);
            int left = eggs;
            for (int holder : of) {
                int some = Math.min(left, free[holder]);
                free[holder] -= some;
                at[count][holder] += some;
                left -= some;
            }
            int moved = left;
            while (left > 0 && moved > 0) {
                moved = reroute(count, left);
                left -= moved;
            }
            return eggs - left;
        }

        /** Makes room by moving eggs of other counts along the shortest way. */
        private int reroute(int count, int most) {
            int[] cameFrom = new int[free.length];
            int[] byCount = new int[free.length];
            java.util.Arrays.fill(cameFrom, UNSEEN);
            var open = new ArrayDeque<Integer>();
            for (int holder : holders.get(count)) {
                cameFrom[holder] = FROM_THE_COUNT;
                byCount[holder] = count;
                open.add(holder);
            }
            while (!open.isEmpty()) {
                int holder = open.remove();
                if (free[holder] > 0) {
                    return shift(holder, most, cameFrom, byCount);
                }
                for (int other = 0; other < holders.size(); other++) {
                    if (at[other][holder] > 0) {
                        for (int next : holders.get(other)) {
                            if (cameFrom[next] == UNSEEN) {
                                cameFrom[next] = holder;
                                byCount[next] = other;
                                open.add(next);
                            }
                        }
                    }
                }
            }
            return 0;
        }

        private int shift(int last, int most, int[] cameFrom, int[] byCount) {
            int some = Math.min(most, free[last]);
            for (int h = last; cameFrom[h] != FROM_THE_COUNT; h = cameFrom[h]) {
                some = Math.min(some, at[byCount[h]][cameFrom[h]]);
            }
            free[last] -= some;
            for (int h = last; h >= 0; h = cameFrom[h]) {
                at[byCount[h]][h] += some;
                if (cameFrom[h] >= 0) {
                    at[byCount[h]][cameFrom[h]] -= some;
                }
            }
            return some;
        }
    }
}
