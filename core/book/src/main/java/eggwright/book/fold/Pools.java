package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.name.BasketName;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookedOver;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Where every egg of a group of sets is: in pools while in a machine, in departures once out. Nothing is ever split by
 * guess: a count that speaks of several pools makes them one pool from then on.
 */
final class Pools {
    private final SortedMap<ParcelId, Parcel> parcels = new TreeMap<>();
    private final List<Pool> pools = new ArrayList<>();
    private final List<Departure> departures = new ArrayList<>();

    void put(Parcel parcel) {
        parcels.put(parcel.id(), parcel);
    }

    void put(Pool pool) {
        for (int i = 0; i < pools.size(); i++) {
            if (pools.get(i).isLike(pool)) {
                pools.set(i, pool.withEggs(pool.eggs() + pools.get(i).eggs()));
                return;
            }
        }
        pools.add(pool);
    }

    SortedMap<ParcelId, Parcel> parcels() {
        return parcels;
    }

    List<Pool> pools() {
        return pools;
    }

    List<Departure> departures() {
        return departures;
    }

    int held(Predicate<Pool> chosen) {
        int eggs = 0;
        for (var pool : pools) {
            if (chosen.test(pool)) {
                eggs += pool.eggs();
            }
        }
        return eggs;
    }

    Predicate<Pool> in(Scope scope) {
        return pool -> isIn(scope, pool.where(), pool.baskets(), pool.of());
    }

    Predicate<Departure> departedFrom(Scope scope) {
        return d -> (scope.look() == null || scope.look().equals(d.by)) && isIn(scope, d.where, d.baskets, d.of);
    }

    private boolean isIn(Scope scope, SortedSet<LoadRef> where, SortedSet<BasketName> baskets, Parcels of) {
        if (scope.set() != null
                && where.stream()
                        .noneMatch(l -> l.set().equals(scope.set())
                                && (scope.tray() == null || l.tray().equals(scope.tray())))) {
            return false;
        }
        if (scope.basket() != null && !baskets.contains(scope.basket())) {
            return false;
        }
        return scope.pen() == null || anyOfPen(of, scope);
    }

    private boolean anyOfPen(Parcels of, Scope scope) {
        for (var id : of) {
            if (isOfPen(id, scope)) {
                return true;
            }
        }
        return false;
    }

    private boolean isOfPen(ParcelId id, Scope scope) {
        var parcel = parcels.get(id);
        return parcel != null
                && scope.pen() != null
                && scope.pen().equals(parcel.lot().pen());
    }

    /** The parcels of a pool that a count naming a pen can speak of. */
    private Parcels narrowed(Parcels of, Scope scope) {
        return scope.pen() == null
                ? of
                : new Parcels(of.ids().stream().filter(id -> isOfPen(id, scope)).toList());
    }

    /** Draws pools together where the count cannot tell them apart; gives the place of the one pool, or -1 for none. */
    private int oneOf(Predicate<Pool> chosen) {
        var mine = pools.stream().filter(chosen).toList();
        if (mine.isEmpty()) {
            return -1;
        }
        if (mine.size() == 1) {
            return pools.indexOf(mine.getFirst());
        }
        pools.removeAll(mine);
        put(Pool.together(mine));
        return pools.size() - 1;
    }

    /** One count that leaves: so many with this fate. */
    record Leaving(Fate fate, int eggs) {}

    /**
     * Eggs leave the machines.
     *
     * @return for each count, how many more it named than were there
     */
    List<Leaving> take(Scope scope, List<Leaving> counts, EntryId by, int fromDay, int toDay) {
        var named = counts.stream().filter(c -> c.eggs() > 0).toList();
        if (named.isEmpty()) {
            return List.of();
        }
        var chosen = in(scope);
        if (named.size() == 1 && named.getFirst().eggs() == held(chosen)) {
            takeAll(scope, chosen, named.getFirst().fate(), by, fromDay, toDay);
            return List.of();
        }
        var short_ = new ArrayList<Leaving>();
        int at = oneOf(chosen);
        for (var count : named) {
            int held = at < 0 ? 0 : pools.get(at).eggs();
            int taken = Math.min(held, count.eggs());
            if (taken > 0) {
                var pool = pools.get(at);
                pools.set(at, pool.withEggs(held - taken));
                depart(narrowed(pool.of(), scope), count.fate(), by, pool, fromDay, toDay, taken);
            }
            if (taken < count.eggs()) {
                short_.add(new Leaving(count.fate(), count.eggs() - taken));
            }
        }
        pools.removeIf(p -> p.eggs() == 0);
        return short_;
    }

    /** All that the scope holds leave with one fate; what could be told apart stays told apart. */
    void takeAll(Scope scope, Predicate<Pool> chosen, Fate fate, EntryId by, int fromDay, int toDay) {
        for (var pool : pools.stream().filter(chosen).toList()) {
            depart(narrowed(pool.of(), scope), fate, by, pool, fromDay, toDay, pool.eggs());
            pools.remove(pool);
        }
    }

    private void depart(Parcels of, Fate fate, EntryId by, Pool from, int fromDay, int toDay, int eggs) {
        departures.add(new Departure(of, fate, by, from.where(), from.baskets(), fromDay, toDay, eggs, eggs));
    }

    /** What a look at so many eggs of the scope had before it. */
    List<LookedOver> lookedOver(Scope scope, EntryId by, int seen) {
        var mine = pools.stream().filter(in(scope)).toList();
        if (mine.isEmpty()) {
            return List.of();
        }
        if (seen >= held(in(scope))) {
            return mine.stream()
                    .map(p -> new LookedOver(by, narrowed(p.of(), scope), p.where(), p.eggs(), p.eggs()))
                    .toList();
        }
        var all = Pool.together(mine);
        return List.of(new LookedOver(by, narrowed(all.of(), scope), all.where(), all.eggs(), seen));
    }

    /** Moves up to {@code eggs}; gives how many were moved. */
    int move(Predicate<Pool> chosen, int eggs, LoadRef to) {
        int held = held(chosen);
        if (eggs >= held) {
            for (var pool : pools.stream().filter(chosen).toList()) {
                pools.remove(pool);
                put(pool.movedTo(to, pool.eggs()));
            }
            return held;
        }
        int at = oneOf(chosen);
        var pool = pools.get(at);
        pools.set(at, pool.withEggs(pool.eggs() - eggs));
        put(pool.movedTo(to, eggs));
        return eggs;
    }

    /** Transfers up to {@code eggs} of a load; gives how many were transferred. */
    int transfer(LoadRef load, int eggs, SortedSet<BasketName> into) {
        Predicate<Pool> chosen =
                p -> p.phase() == LoadPhase.IN_SETTER && p.where().contains(load);
        int held = held(chosen);
        if (eggs >= held) {
            for (var pool : pools.stream().filter(chosen).toList()) {
                pools.remove(pool);
                put(pool.inHatcher(into, pool.eggs()));
            }
            return held;
        }
        if (eggs == 0) {
            return 0;
        }
        int at = oneOf(chosen);
        var pool = pools.get(at);
        pools.set(at, pool.withEggs(pool.eggs() - eggs));
        put(pool.inHatcher(into, eggs));
        return eggs;
    }

    /**
     * Chicks that hatched after the last pull: they were held to be unaccounted. Gives how many were found. Eggs opened
     * without a class are unaccounted too, but no chick can come of them.
     */
    int takeLate(Scope scope, Leaving count, EntryId by, int day) {
        var from = departures.stream()
                .filter(departedFrom(scope))
                .filter(d -> d.fate == Fate.UNACCOUNTED && d.eggs > 0 && d.atTheLamp >= d.eggs)
                .toList();
        int there = from.stream().mapToInt(d -> d.eggs).sum();
        int taken = Math.min(there, count.eggs());
        if (taken == 0) {
            return 0;
        }
        if (taken == there || from.size() == 1) {
            int left = taken;
            for (var d : from) {
                int some = Math.min(left, d.eggs);
                d.eggs -= some;
                d.atTheLamp -= some;
                left -= some;
                departures.add(new Departure(d.of, count.fate(), by, d.where, d.baskets, day, day, some, some));
            }
            return taken;
        }
        int lamp = from.stream().mapToInt(d -> d.atTheLamp).sum();
        var rest = together(from, there - taken, lamp - taken);
        from.forEach(d -> d.atTheLamp = 0);
        departures.add(rest);
        departures.add(new Departure(rest.of, count.fate(), by, rest.where, rest.baskets, day, day, taken, taken));
        return taken;
    }

    /** One departure of them all, with what is left of them; the old ones become empty. */
    private static Departure together(List<Departure> many, int eggs, int atTheLamp) {
        var where = new TreeSet<LoadRef>();
        var baskets = new TreeSet<BasketName>();
        var of = new ArrayList<Parcels>();
        int fromDay = Integer.MAX_VALUE;
        int toDay = 0;
        for (var d : many) {
            where.addAll(d.where);
            baskets.addAll(d.baskets);
            of.add(d.of);
            fromDay = Math.min(fromDay, d.fromDay);
            toDay = Math.max(toDay, d.toDay);
        }
        var first = many.getFirst();
        var merged =
                new Departure(Parcels.union(of), first.fate, first.by, where, baskets, fromDay, toDay, eggs, atTheLamp);
        for (var d : many) {
            d.eggs = 0;
        }
        return merged;
    }

    /**
     * Takes eggs of one fate out of the account to be named anew. Gives the departures they came from; where only part of
     * several departures was taken, what is left of those speaks of them together.
     */
    List<Taken> open(Predicate<Departure> chosen, Fate fate, int eggs) {
        var from = departures.stream()
                .filter(chosen)
                .filter(d -> d.fate == fate && d.eggs > 0)
                .toList();
        int there = from.stream().mapToInt(d -> d.eggs).sum();
        int taken = Math.min(there, eggs);
        if (taken == 0) {
            return List.of();
        }
        if (taken == there || from.size() == 1) {
            var found = new ArrayList<Taken>();
            int left = taken;
            for (var d : from) {
                int some = Math.min(left, d.eggs);
                d.eggs -= some;
                left -= some;
                found.add(new Taken(d.of, d.where, d.baskets, some));
            }
            return found;
        }
        var rest = together(from, there - taken, 0);
        departures.add(rest);
        return List.of(new Taken(rest.of, rest.where, rest.baskets, taken));
    }

    /** Eggs taken out to be named anew. */
    record Taken(Parcels of, SortedSet<LoadRef> where, SortedSet<BasketName> baskets, int eggs) {}

    /** Eggs opened straight from the machine. */
    List<Taken> openHeld(Scope scope, int eggs) {
        var chosen = in(scope);
        int held = held(chosen);
        int taken = Math.min(held, eggs);
        if (taken == 0) {
            return List.of();
        }
        if (taken == held) {
            var found = new ArrayList<Taken>();
            for (var pool : pools.stream().filter(chosen).toList()) {
                pools.remove(pool);
                found.add(new Taken(narrowed(pool.of(), scope), pool.where(), pool.baskets(), pool.eggs()));
            }
            return found;
        }
        int at = oneOf(chosen);
        var pool = pools.get(at);
        pools.set(at, pool.withEggs(pool.eggs() - taken));
        return List.of(new Taken(narrowed(pool.of(), scope), pool.where(), pool.baskets(), taken));
    }

    /**
     * Names opened eggs.
     *
     * @param atTheLamp whether these also stand in the account of the lamp (eggs opened straight from the machine)
     */
    void name(List<Taken> opened, Fate as, int eggs, EntryId by, int day, int atTheLamp) {
        if (eggs == 0 || opened.isEmpty()) {
            return;
        }
        var where = new TreeSet<LoadRef>();
        var baskets = new TreeSet<BasketName>();
        for (var taken : opened) {
            where.addAll(taken.where());
            baskets.addAll(taken.baskets());
        }
        departures.add(new Departure(
                Parcels.union(opened.stream().map(Taken::of).toList()),
                as,
                by,
                where,
                baskets,
                0,
                day,
                eggs,
                atTheLamp));
    }

    List<FateCount> fates() {
        var fates = new ArrayList<FateCount>();
        departures.stream().filter(d -> d.eggs > 0).map(Departure::now).forEach(fates::add);
        fates.addAll(stillIn());
        return fates;
    }

    List<FateCount> atTheLamp() {
        var fates = new ArrayList<FateCount>();
        departures.stream()
                .filter(d -> d.atTheLamp > 0)
                .map(Departure::seenAtTheLamp)
                .forEach(fates::add);
        fates.addAll(stillIn());
        return fates;
    }

    private List<FateCount> stillIn() {
        return pools.stream()
                .map(p -> new FateCount(
                        p.of(),
                        p.phase() == LoadPhase.IN_SETTER ? Fate.IN_SETTER : Fate.IN_HATCHER,
                        p.eggs(),
                        null,
                        0,
                        0))
                .toList();
    }
}
