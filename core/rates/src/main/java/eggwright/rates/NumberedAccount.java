package eggwright.rates;

import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.FateSort;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** One account with its parcels numbered, so that a report over a large book stays quick. */
final class NumberedAccount {
    /** So many eggs of these parcels together. */
    record Count(int[] of, Fate fate, int eggs) {}

    /** A look at a part of the eggs of these parcels together. */
    record PartSeen(int[] of, int eggs) {}

    final String[] keys;
    final int[] eggs;
    final List<Count> fates;

    /** The same counts by fate. */
    final Map<Fate, List<Count>> byFate;

    /** Counts at the lamp, by fate. */
    final Map<Fate, List<Count>> lamp;

    final List<PartSeen> partLooks;

    /** No egg of the parcel is still in a machine. */
    final boolean[] finished;

    /** Eggs of the parcel were opened. */
    final boolean[] opened;

    /** Eggs of the parcel that looks at whole loads had before them. */
    final int[] looked;

    private NumberedAccount(EggAccount account, Function<Parcel, String> key) {
        int n = account.parcels().size();
        var numbers = new HashMap<ParcelId, Integer>(2 * n);
        keys = new String[n];
        eggs = new int[n];
        for (var parcel : account.parcels().values()) {
            int i = numbers.size();
            numbers.put(parcel.id(), i);
            keys[i] = key.apply(parcel);
            eggs[i] = parcel.eggs();
        }
        var known = new IdentityHashMap<Parcels, int[]>();
        fates = numbered(account.fates(), numbers, known);
        byFate = byFate(fates);
        lamp = byFate(numbered(account.atTheLamp(), numbers, known));
        finished = new boolean[n];
        opened = new boolean[n];
        java.util.Arrays.fill(finished, true);
        for (var count : fates) {
            for (int i : count.of()) {
                finished[i] &= count.fate().sort() != FateSort.STILL_IN;
                opened[i] |= count.fate().sort() == FateSort.OPENED;
            }
        }
        partLooks = new ArrayList<>();
        looked = looked(account, numbers, n);
    }

    static NumberedAccount of(EggAccount account, Function<Parcel, String> key) {
        return new NumberedAccount(account, key);
    }

    int parcels() {
        return eggs.length;
    }

    boolean has(Fate fate) {
        return byFate.containsKey(fate);
    }

    private static Map<Fate, List<Count>> byFate(List<Count> counts) {
        var found = new EnumMap<Fate, List<Count>>(Fate.class);
        for (var count : counts) {
            found.computeIfAbsent(count.fate(), f -> new ArrayList<>()).add(count);
        }
        return found;
    }

    /** Most counts of an account speak of a few groups of parcels, whose numbers are looked up once. */
    private static List<Count> numbered(
            List<FateCount> counts, Map<ParcelId, Integer> numbers, Map<Parcels, int[]> known) {
        var found = new ArrayList<Count>(counts.size());
        for (var count : counts) {
            int[] of = known.computeIfAbsent(count.of(), parcels -> numbers(parcels.ids(), numbers));
            found.add(new Count(of, count.fate(), count.eggs()));
        }
        return found;
    }

    private static int[] numbers(List<ParcelId> ids, Map<ParcelId, Integer> numbers) {
        int[] found = new int[ids.size()];
        for (int i = 0; i < found.length; i++) {
            var number = numbers.get(ids.get(i));
            if (number == null) {
                throw new IllegalStateException(
                        "A count speaks of " + ids.get(i) + ", which its account does not hold");
            }
            found[i] = number;
        }
        return found;
    }

    /** Adds up over trays, for an egg may be looked at in each tray that it was pooled into, but once in each. */
    private int[] looked(EggAccount account, Map<ParcelId, Integer> numbers, int n) {
        var byPlace = new HashMap<Object, int[]>();
        for (var look : account.looks()) {
            int[] of = numbers(look.of().ids(), numbers);
            if (look.isWhole()) {
                int[] here = byPlace.computeIfAbsent(look.where(), w -> new int[n]);
                for (int i : of) {
                    // Of several lots in one tray all of each were there, as far as anybody can tell.
                    here[i] = Math.max(here[i], of.length > 1 ? eggs[i] : Math.min(eggs[i], look.held()));
                }
            } else if (look.seen() > 0) {
                partLooks.add(new PartSeen(of, look.seen()));
            }
        }
        int[] sum = new int[n];
        for (int[] here : byPlace.values()) {
            for (int i = 0; i < n; i++) {
                sum[i] = Math.min(eggs[i], sum[i] + here[i]);
            }
        }
        return sum;
    }
}
