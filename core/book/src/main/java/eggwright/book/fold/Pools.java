package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookedOver;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Eggs in the machines. A count that speaks of several pools makes them one, of which from then on only the sum is
 * known; a count of one tray of such a pool is known for that tray, and what is left is still only known as a sum.
 * Nothing is ever split by guess.
 */
final class Pools {
    private final Whereabouts where;

    Pools(Whereabouts where) {
        this.where = where;
    }

    /** One count that leaves: so many with this fate. */
    record Leaving(Fate fate, int eggs) {}

    List<Named<Pool>> in(Scope scope) {
        return where.sieve(scope).of(where.pools());
    }

    /** The most that these can be. */
    int most(List<Named<Pool>> named) {
        int sum = Named.eggs(named);
        return Named.areWhole(named) ? sum : where.room(Named.from(named), Named.together(named), sum, Account.BOTH);
    }

    /** The least that these can be. */
    int least(List<Named<Pool>> named) {
        return Named.areWhole(named) ? Named.eggs(named) : where.least(named);
    }

    /** Makes what was named one pool; what is left of it keeps its place in the list. */
    private Named<Pool> oneOf(List<Named<Pool>> named) {
        if (named.size() == 1) {
            return named.getFirst();
        }
        var eggs = Named.together(named);
        var one = Pool.together(Named.from(named));
        where.pools().removeAll(Named.from(named));
        where.pools().add(one);
        return new Named<>(one, eggs.spots(), eggs.of());
    }

    private Named<Pool> replaced(Named<Pool> named, int eggs) {
        var less = named.from().withEggs(eggs);
        where.replace(named.from(), less);
        return new Named<>(less, named.spots(), named.of());
    }

    /**
     * Eggs leave the machines.
     *
     * @return for each count, how many more it named than were there
     */
    List<Leaving> take(Scope scope, List<Leaving> counts, EntryId by, int fromDay, int toDay) {
        var some = new ArrayList<Leaving>(counts.size());
        for (var count : counts) {
            if (count.eggs() > 0) {
                some.add(count);
            }
        }
        if (some.isEmpty()) {
            return List.of();
        }
        var named = in(scope);
        if (named.isEmpty()) {
            return some;
        }
        if (some.size() == 1 && Named.areWhole(named) && some.getFirst().eggs() == Named.eggs(named)) {
            for (var one : named) {
                departWhole(one, some.getFirst().fate(), by, fromDay, toDay);
            }
            return List.of();
        }
        return take(oneOf(named), some, by, fromDay, toDay);
    }

    private List<Leaving> take(Named<Pool> from, List<Leaving> counts, EntryId by, int fromDay, int toDay) {
        var missing = new ArrayList<Leaving>();
        var left = from;
        for (var count : counts) {
            int wanted = Math.min(left.from().eggs(), count.eggs());
            int taken = wanted == 0 ? 0 : Math.min(wanted, most(List.of(left)));
            if (taken > 0) {
                left = replaced(left, left.from().eggs() - taken);
                where.depart(left.spots(), left.of(), count.fate(), by, fromDay, toDay, taken);
            }
            if (taken < count.eggs()) {
                missing.add(new Leaving(count.fate(), count.eggs() - taken));
            }
        }
        where.forgetEmpty();
        return missing;
    }

    private void departWhole(Named<Pool> all, Fate fate, EntryId by, int fromDay, int toDay) {
        where.pools().remove(all.from());
        where.depart(all.spots(), all.of(), fate, by, fromDay, toDay, all.from().eggs());
    }

    /**
     * What the scope still holds did not hatch. Where only a part of a pool is meant, that many of it as must be there
     * are unaccounted; the rest when the last pull of the others has been made.
     */
    void lastPull(Scope scope, EntryId by, int day) {
        for (var one : in(scope)) {
            if (one.isWhole()) {
                departWhole(one, Fate.UNACCOUNTED, by, day, day);
                continue;
            }
            int sure = Math.min(least(List.of(one)), most(List.of(one)));
            var left = replaced(one, one.from().eggs() - sure);
            if (sure > 0) {
                where.depart(one.spots(), one.of(), Fate.UNACCOUNTED, by, day, day, sure);
            }
            where.replace(left.from(), relabelled(left, spot -> spot.pulledLast(one.of())));
        }
        where.forgetEmpty();
        closePulled(by, day);
    }

    /** Where nothing is left in a pool but what a last pull spoke of, that did not hatch. */
    void closePulled(EntryId by, int day) {
        for (var pool : List.copyOf(where.pools())) {
            if (pool.phase() == LoadPhase.OUT) {
                departWhole(new Named<>(pool, pool.spots(), pool.of()), Fate.UNACCOUNTED, by, day, day);
            }
        }
    }

    private static Pool relabelled(Named<Pool> named, UnaryOperator<Spot> to) {
        var spots = new ArrayList<Spot>(named.from().spots().size());
        for (var spot : named.from().spots()) {
            spots.add(named.spots().contains(spot) ? to.apply(spot) : spot);
        }
        return new Pool(List.copyOf(spots), named.from().of(), named.from().eggs());
    }

    /** So many fewer of what was named, at most all. */
    Named<Pool> less(List<Named<Pool>> named, int eggs) {
        var one = oneOf(named);
        var left = replaced(one, one.from().eggs() - eggs);
        where.forgetEmpty();
        return left;
    }

    /** What a look at so many eggs of these had before it. */
    static List<LookedOver> lookedOver(List<Named<Pool>> named, EntryId by, int seen, int most) {
        if (named.isEmpty()) {
            return List.of();
        }
        if (seen >= most && Named.areWhole(named)) {
            var all = new ArrayList<LookedOver>(named.size());
            for (var one : named) {
                int eggs = one.from().eggs();
                all.add(new LookedOver(by, one.of(), loads(one.spots()), eggs, eggs));
            }
            return all;
        }
        var together = Named.together(named);
        return List.of(new LookedOver(by, together.of(), loads(together.spots()), most, Math.min(seen, most)));
    }

    private static java.util.Set<LoadRef> loads(List<Spot> spots) {
        var loads = new TreeSet<LoadRef>();
        spots.forEach(s -> loads.add(s.load()));
        return loads;
    }

    /** All that was named walks to another load. */
    void moveAll(List<Named<Pool>> named, LoadRef to) {
        for (var one : named) {
            if (one.from().of().ids().size() == one.of().ids().size() || isOfWholeSpots(one)) {
                walk(one, spot -> spot.movedTo(to));
            } else {
                // Some of a mixed tray, nobody counted how many: from now on only their sum is known.
                var apart = where.unknownPartOf(one, most(List.of(one))).movedTo(to);
                var spots = new ArrayList<>(one.from().spots());
                spots.add(apart);
                where.replace(one.from(), one.from().withSpots(List.copyOf(spots)));
            }
        }
    }

    private static boolean isOfWholeSpots(Named<Pool> one) {
        for (var spot : one.spots()) {
            if (spot.of().within(one.of()).map(of -> of.ids().size()).orElse(0)
                    < spot.of().ids().size()) {
                return false;
            }
        }
        return true;
    }

    private void walk(Named<Pool> named, UnaryOperator<Spot> to) {
        var moved = relabelled(named, to);
        if (moved.spots().size() == 1) {
            where.pools().remove(named.from());
            where.put(moved);
        } else {
            where.replace(named.from(), moved);
        }
    }

    /** So many of what was named, at most all, walk to another load. */
    void move(List<Named<Pool>> named, int eggs, LoadRef to) {
        if (eggs > 0) {
            where.put(apart(named, eggs, spot -> spot.movedTo(to)));
        }
    }

    private Pool apart(List<Named<Pool>> named, int eggs, UnaryOperator<Spot> to) {
        var one = less(named, eggs);
        return Pool.of(to.apply(where.setApart(one.spots(), one.of(), eggs)), eggs);
    }

    /** What the scope holds that has not been transferred. */
    List<Named<Pool>> inSetter(Scope scope) {
        return in(scope, phase -> phase == LoadPhase.IN_SETTER);
    }

    /** What the scope holds of which the last pull has not been made. */
    List<Named<Pool>> stillIn(Scope scope) {
        return in(scope, phase -> phase != LoadPhase.OUT);
    }

    private List<Named<Pool>> in(Scope scope, Predicate<LoadPhase> chosen) {
        var found = new ArrayList<Named<Pool>>();
        for (var one : in(scope)) {
            var spots = one.spots().stream().filter(s -> chosen.test(s.phase())).toList();
            if (spots.size() == one.spots().size()) {
                found.add(one);
            } else if (!spots.isEmpty()) {
                one.of().within(Spot.parcels(spots)).ifPresent(of -> found.add(new Named<>(one.from(), spots, of)));
            }
        }
        return found;
    }

    void transferAll(List<Named<Pool>> named, SortedSet<BasketName> into, Instant at) {
        named.forEach(one -> walk(one, spot -> spot.inHatcher(into, at)));
    }

    /** So many of what was named, at most all, go to the hatcher; the rest stays. */
    void transfer(List<Named<Pool>> named, int eggs, SortedSet<BasketName> into, Instant at) {
        if (eggs > 0) {
            where.put(apart(named, eggs, spot -> spot.inHatcher(into, at)));
        }
    }

    /** All of what was named go to the hatcher, and were so many: the rest of a larger pool is what others hold. */
    void transferCounted(List<Named<Pool>> named, int eggs, SortedSet<BasketName> into, Instant at) {
        if (Named.areWhole(named) && eggs == Named.eggs(named)) {
            transferAll(named, into, at);
            return;
        }
        var one = oneOf(named);
        var left = replaced(one, one.from().eggs() - eggs);
        if (eggs > 0) {
            where.put(Pool.of(where.setApart(one.spots(), one.of(), eggs).inHatcher(into, at), eggs));
        }
        var others = left.from().spots().stream()
                .filter(s -> !one.spots().contains(s))
                .toList();
        if (others.isEmpty()) {
            where.pools().remove(left.from());
        } else {
            where.replace(left.from(), left.from().withSpots(others));
        }
        where.forgetEmpty();
    }
}
