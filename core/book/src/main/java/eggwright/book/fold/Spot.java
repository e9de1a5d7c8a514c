package eggwright.book.fold;

import eggwright.book.name.BasketName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Eggs that stand together in one load. Where they walk, the number goes with them; what left them on the way keeps the
 * spot as it was when they left.
 *
 * @param number names these eggs among those of the group of sets
 * @param of the parcels they came from
 * @param load where they are
 * @param baskets the baskets in which they may be; empty before transfer or where baskets are not told apart
 * @param inBasketsSince when they went into those; absent before
 * @param phase OUT once a last pull spoke of them, though others counted with them may still be in
 * @param pulled parcels of which the last pull was made, while others in the same spot are still in
 */
record Spot(
        int number,
        Parcels of,
        LoadRef load,
        SortedSet<BasketName> baskets,
        @Nullable Instant inBasketsSince,
        LoadPhase phase,
        List<ParcelId> pulled) {
    private static final SortedSet<BasketName> NO_BASKETS = java.util.Collections.emptySortedSet();

    static Spot inSetter(int number, Parcels of, LoadRef load) {
        return new Spot(number, of, load, NO_BASKETS, null, LoadPhase.IN_SETTER, List.of());
    }

    Spot movedTo(LoadRef to) {
        return new Spot(number, of, to, baskets, inBasketsSince, phase, pulled);
    }

    Spot inHatcher(SortedSet<BasketName> into, Instant since) {
        return new Spot(number, of, load, into, into.isEmpty() ? null : since, LoadPhase.IN_HATCHER, pulled);
    }

    /** After the last pull of these parcels. */
    Spot pulledLast(Parcels last) {
        var all = new TreeSet<>(pulled);
        for (var id : of) {
            if (last.holds(id)) {
                all.add(id);
            }
        }
        return all.size() == of.ids().size()
                ? new Spot(number, of, load, baskets, inBasketsSince, LoadPhase.OUT, List.of())
                : new Spot(number, of, load, baskets, inBasketsSince, phase, List.copyOf(all));
    }

    /** So many of them set apart under a number of their own. */
    Spot apart(int as, Parcels only) {
        return new Spot(as, only, load, baskets, inBasketsSince, phase, List.of());
    }

    boolean isLike(Spot other) {
        return phase == other.phase
                && load.equals(other.load)
                && of.equals(other.of)
                && baskets.equals(other.baskets)
                && pulled.equals(other.pulled);
    }

    static Parcels parcels(Collection<Spot> spots) {
        if (spots.size() == 1) {
            return spots.iterator().next().of;
        }
        var of = new ArrayList<Parcels>(spots.size());
        spots.forEach(s -> of.add(s.of));
        return Parcels.union(of);
    }

    /** Spots in the order of their numbers, each once. */
    static List<Spot> distinct(Collection<Spot> spots) {
        var byNumber = new java.util.TreeMap<Integer, Spot>();
        spots.forEach(s -> byNumber.putIfAbsent(s.number, s));
        return List.copyOf(byNumber.values());
    }
}
