package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Eggs that left the account of one fate to be named anew: opened, or hatched after all. It never adds eggs. */
final class Opening {
    private final Whereabouts where;

    Opening(Whereabouts where) {
        this.where = where;
    }

    private List<Named<Departure>> gone(Scope scope, Predicate<Departure> chosen) {
        var some = new ArrayList<Departure>();
        for (var departure : where.departures()) {
            if (departure.eggs > 0
                    && chosen.test(departure)
                    && (scope.look() == null || scope.look().equals(departure.by))) {
                some.add(departure);
            }
        }
        return some.isEmpty() ? List.of() : where.sieve(scope).of(some);
    }

    /** How many eggs with this fate the scope can mean. */
    int count(Scope scope, Fate fate) {
        var gone = gone(scope, d -> d.fate == fate);
        return most(gone, Named.eggs(gone), Account.FATES);
    }

    private int most(List<Named<Departure>> gone, int wanted, Account account) {
        int most = Math.min(wanted, Named.eggs(gone));
        return most == 0 || Named.areWhole(gone)
                ? most
                : where.room(Named.from(gone), Named.together(gone), most, account);
    }

    /**
     * Takes eggs of one fate out of the account to be opened; gives how many. Where only part of several counts was
     * taken, what is left of those speaks of them together.
     */
    int open(Scope scope, Fate fate, int eggs) {
        var gone = gone(scope, d -> d.fate == fate);
        int taken = most(gone, eggs, Account.FATES);
        if (taken == 0) {
            return 0;
        }
        if (taken == Named.eggs(gone) && Named.areWhole(gone)) {
            for (var one : gone) {
                opened(one.spots(), one.of(), one.from(), one.from().eggs, 0);
                one.from().eggs = 0;
            }
            return taken;
        }
        var together = Named.together(gone);
        var first = gone.getFirst().from();
        if (gone.size() == 1) {
            first.eggs -= taken;
        } else {
            joined(gone, Named.eggs(gone) - taken, 0);
        }
        opened(together.spots(), together.of(), first, taken, 0);
        return taken;
    }

    private void opened(List<Spot> spots, Parcels of, Departure was, int eggs, int atTheLamp) {
        where.opened().add(new Departure(spots, of, was.fate, was.by, was.fromDay, was.toDay, eggs, atTheLamp));
    }

    /** One departure in the place of many; what stood at the lamp stays with those. */
    private void joined(List<Named<Departure>> gone, int eggs, int atTheLamp) {
        int fromDay = Integer.MAX_VALUE;
        int toDay = 0;
        var spots = new ArrayList<Spot>();
        var of = new ArrayList<Parcels>();
        for (var one : gone) {
            var departure = one.from();
            spots.addAll(departure.spots());
            of.add(departure.of());
            fromDay = Math.min(fromDay, departure.fromDay);
            toDay = Math.max(toDay, departure.toDay);
            departure.eggs = 0;
        }
        var first = gone.getFirst().from();
        where.departures()
                .add(new Departure(
                        Spot.distinct(spots),
                        Parcels.union(of),
                        first.fate,
                        first.by,
                        fromDay,
                        toDay,
                        eggs,
                        atTheLamp));
    }

    /** Eggs opened straight from the machine; gives how many. */
    int openHeld(Pools pools, Scope scope, int eggs, EntryId by) {
        var named = pools.in(scope);
        int taken = Math.min(eggs, pools.most(named));
        if (taken == 0) {
            return 0;
        }
        if (taken == Named.eggs(named) && Named.areWhole(named)) {
            for (var one : named) {
                where.pools().remove(one.from());
                int all = one.from().eggs();
                where.opened().add(new Departure(one.spots(), one.of(), Fate.UNACCOUNTED, by, 0, 0, all, all));
            }
        } else {
            var one = pools.less(named, taken);
            where.opened().add(new Departure(one.spots(), one.of(), Fate.UNACCOUNTED, by, 0, 0, taken, taken));
        }
        return taken;
    }

    /** How many opened eggs wait to be named. */
    int waiting() {
        return Named.sum(where.opened());
    }

    /**
     * Names opened eggs. Eggs of one class only stay as far apart as they were; of several classes nobody can tell which
     * came from where.
     *
     * @param named for each class how many, adding up to what was opened
     */
    void name(List<Pools.Leaving> named, EntryId by, int day) {
        var opened = List.copyOf(where.opened());
        where.opened().clear();
        if (named.size() == 1) {
            var as = named.getFirst().fate();
            opened.forEach(
                    o -> where.departures().add(new Departure(o.spots(), o.of(), as, by, 0, day, o.eggs, o.atTheLamp)));
            return;
        }
        var spots = new ArrayList<Spot>();
        var of = new ArrayList<Parcels>(opened.size());
        int lamp = 0;
        for (var some : opened) {
            spots.addAll(some.spots());
            of.add(some.of());
            lamp += some.atTheLamp;
        }
        for (var some : named) {
            int here = Math.min(lamp, some.eggs());
            lamp -= here;
            where.departures()
                    .add(new Departure(
                            Spot.distinct(spots), Parcels.union(of), some.fate(), by, 0, day, some.eggs(), here));
        }
    }

    /**
     * Chicks that hatched after the last pull: they were held to be unaccounted. Gives how many were found. Eggs opened
     * without a class are unaccounted too, but no chick can come of them.
     */
    int takeLate(Scope scope, Pools.Leaving count, EntryId by, int day) {
        var gone = gone(scope, d -> d.fate == Fate.UNACCOUNTED && d.atTheLamp >= d.eggs);
        int taken = most(gone, count.eggs(), Account.BOTH);
        if (taken == 0) {
            return 0;
        }
        if (gone.size() > 1 && !(taken == Named.eggs(gone) && Named.areWhole(gone))) {
            var together = Named.together(gone);
            int lamp = 0;
            for (var one : gone) {
                lamp += one.from().atTheLamp;
            }
            joined(gone, Named.eggs(gone) - taken, lamp - taken);
            gone.forEach(one -> one.from().atTheLamp = 0);
            where.depart(together.spots(), together.of(), count.fate(), by, day, day, taken);
            return taken;
        }
        int left = taken;
        for (var one : gone) {
            int some = Math.min(left, one.from().eggs);
            one.from().eggs -= some;
            one.from().atTheLamp -= some;
            left -= some;
            where.depart(one.spots(), one.of(), count.fate(), by, day, day, some);
        }
        return taken;
    }
}
