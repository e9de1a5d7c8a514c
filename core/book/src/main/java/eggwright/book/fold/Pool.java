package eggwright.book.fold;

import eggwright.book.name.BasketName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Eggs in a machine that can no longer be told apart.
 *
 * @param of the parcels they came from
 * @param where the loads in which they may be; several once they were counted together
 * @param baskets the baskets in which they may be; empty before transfer or where baskets are not told apart
 */
record Pool(Parcels of, SortedSet<LoadRef> where, SortedSet<BasketName> baskets, LoadPhase phase, int eggs) {
    static Pool inSetter(Parcels of, LoadRef where, int eggs) {
        return new Pool(of, new TreeSet<>(List.of(where)), new TreeSet<>(), LoadPhase.IN_SETTER, eggs);
    }

    Pool withEggs(int now) {
        return new Pool(of, where, baskets, phase, now);
    }

    Pool movedTo(LoadRef load, int count) {
        return new Pool(of, new TreeSet<>(List.of(load)), baskets, phase, count);
    }

    Pool inHatcher(SortedSet<BasketName> into, int count) {
        return new Pool(of, where, into, LoadPhase.IN_HATCHER, count);
    }

    boolean isLike(Pool other) {
        return phase == other.phase
                && of.equals(other.of)
                && where.equals(other.where)
                && baskets.equals(other.baskets);
    }

    /** One pool of them all: from here on a count speaks of them together. */
    static Pool together(Collection<Pool> many) {
        var where = new TreeSet<LoadRef>();
        var baskets = new TreeSet<BasketName>();
        var parcels = new ArrayList<Parcels>();
        var phase = LoadPhase.IN_HATCHER;
        int eggs = 0;
        for (var pool : many) {
            where.addAll(pool.where);
            baskets.addAll(pool.baskets);
            parcels.add(pool.of);
            eggs += pool.eggs;
            if (pool.phase == LoadPhase.IN_SETTER) {
                phase = LoadPhase.IN_SETTER;
            }
        }
        return new Pool(Parcels.union(parcels), where, baskets, phase, eggs);
    }
}
