package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where every egg of a group of sets is: in pools while in a machine, in departures once out. Their eggs always add up to
 * those of the parcels, and there is always a way to give each egg of a count to one of the parcels and one of the spots
 * that the count names, no parcel and no spot getting more than it held.
 */
final class Whereabouts {
    private final SortedMap<ParcelId, Parcel> parcels = new TreeMap<>();
    private final List<Pool> pools = new ArrayList<>();
    private final List<Departure> departures = new ArrayList<>();
    /** Eggs that were opened and wait to be named. */
    private final List<Departure> opened = new ArrayList<>();
    /** By the number of the spot: eggs that came into it. */
    private final List<Integer> held = new ArrayList<>();
    /** Eggs that were counted out of spots, into another. */
    private final List<Room.Count<Integer>> walked = new ArrayList<>();

    private int countsOfPens;

    SortedMap<ParcelId, Parcel> parcels() {
        return parcels;
    }

    List<Pool> pools() {
        return pools;
    }

    List<Departure> departures() {
        return departures;
    }

    List<Departure> opened() {
        return opened;
    }

    void put(Parcel parcel) {
        parcels.put(parcel.id(), parcel);
    }

    /** Eggs go into the heat. */
    void set(Parcels of, LoadRef load, int eggs) {
        put(Pool.of(Spot.inSetter(newSpot(eggs), of, load), eggs));
    }

    private int newSpot(int eggs) {
        held.add(eggs);
        return held.size() - 1;
    }

    /** Eggs of one spot; joins those that nothing tells from them. */
    void put(Pool pool) {
        var spot = pool.spots().getFirst();
        for (int i = 0; i < pools.size(); i++) {
            var here = pools.get(i);
            if (here.spots().size() == 1 && here.spots().getFirst().isLike(spot)) {
                int number = here.spots().getFirst().number();
                walked.add(new Room.Count<>(List.of(spot.number()), pool.eggs()));
                held.set(number, held.get(number) + pool.eggs());
                pools.set(i, here.withEggs(here.eggs() + pool.eggs()));
                return;
            }
        }
        pools.add(pool);
    }

    /** A spot is in one pool only, so its number finds the pool. */
    void replace(Pool was, Pool now) {
        int number = was.spots().getFirst().number();
        for (int i = 0; i < pools.size(); i++) {
            if (pools.get(i).spots().getFirst().number() == number) {
                pools.set(i, now);
                return;
            }
        }
    }

    void forgetEmpty() {
        pools.removeIf(p -> p.eggs() == 0);
    }

    /** So many eggs of these spots get a spot of their own. */
    Spot setApart(List<Spot> from, Parcels of, int eggs) {
        walked.add(new Room.Count<>(numbers(from), eggs));
        var like = from.getFirst();
        for (var spot : from) {
            like = spot.phase().compareTo(like.phase()) < 0 ? spot : like;
        }
        return like.apart(newSpot(eggs), of);
    }

    /** A further spot for a part of what was named; nobody knows how many are in it. */
    Spot unknownPartOf(Named<Pool> named, int most) {
        return named.spots().getFirst().apart(newSpot(most), named.of());
    }

    void depart(List<Spot> spots, Parcels of, Fate fate, EntryId by, int fromDay, int toDay, int eggs) {
        departures.add(new Departure(spots, of, fate, by, fromDay, toDay, eggs, eggs));
    }

    /** What a count speaks of: where it names a basket, the last filling of it. */
    Sieve sieve(Scope scope) {
        countsOfPens += scope.pen() == null ? 0 : 1;
        var sieve = new Sieve(scope, parcels);
        return scope.basket() == null ? sieve : sieve.lastFilling(pools).lastFilling(departures);
    }

    /**
     * How many of the eggs of some counts can be those named, beside all other counts.
     *
     * @param from the counts they would come from
     * @param most no more than this
     */
    int room(Collection<? extends Counted> from, Named.Eggs named, int most, Account account) {
        int room = besideFates(from, named, most);
        if (account == Account.BOTH && room > 0) {
            room = besideLamp(from, named, room);
        }
        return room;
    }

    /** How many of some parts of pools must be there, for what else these pools hold cannot be more. */
    int least(List<Named<Pool>> named) {
        var spots = new ArrayList<Spot>();
        var of = new ArrayList<Parcels>();
        for (var one : named) {
            var others = one.othersMayBeOf();
            if (others.isPresent()) {
                of.add(others.get());
                spots.addAll(one.othersMayBeIn());
            }
        }
        int eggs = Named.eggs(named);
        return of.isEmpty()
                ? eggs
                : eggs - room(Named.from(named), new Named.Eggs(spots, Parcels.union(of)), eggs, Account.BOTH);
    }

    private int besideFates(Collection<? extends Counted> from, Named.Eggs named, int most) {
        var counts = new Beside();
        for (var gone : List.of(departures, opened)) {
            for (var departure : gone) {
                counts.add(departure, from.contains(departure) ? 0 : departure.eggs);
            }
        }
        return beside(from, named, most, counts);
    }

    private int besideLamp(Collection<? extends Counted> from, Named.Eggs named, int most) {
        var counts = new Beside();
        for (var gone : List.of(departures, opened)) {
            for (var departure : gone) {
                counts.add(departure, departure.atTheLamp - (from.contains(departure) ? departure.eggs : 0));
            }
        }
        return beside(from, named, most, counts);
    }

    /** Counts beside which others have to find room, by spot and by parcel. */
    private final class Beside {
        final List<Room.Count<Integer>> spots = new ArrayList<>(walked);
        final List<Room.Count<ParcelId>> of = new ArrayList<>();

        void add(Counted counted, int eggs) {
            if (eggs > 0) {
                spots.add(new Room.Count<>(numbers(counted.spots()), eggs));
                of.add(new Room.Count<>(counted.of().ids(), eggs));
            }
        }
    }

    private int beside(Collection<? extends Counted> from, Named.Eggs named, int most, Beside counts) {
        for (var pool : pools) {
            counts.add(pool, from.contains(pool) ? 0 : pool.eggs());
        }
        int room = new Room<>(counts.spots, held::get).beside(numbers(named.spots()), most);
        return lotsFollowSpots() || room == 0
                ? room
                : new Room<>(counts.of, this::eggs).beside(named.of().ids(), room);
    }

    /** Whether every count is of whole spots as they were set, so that what has room there has room among the lots. */
    private boolean lotsFollowSpots() {
        return walked.isEmpty() && countsOfPens == 0;
    }

    private int eggs(ParcelId id) {
        var parcel = parcels.get(id);
        return parcel == null ? 0 : parcel.eggs();
    }

    private static List<Integer> numbers(List<Spot> spots) {
        var numbers = new ArrayList<Integer>(spots.size());
        spots.forEach(s -> numbers.add(s.number()));
        return numbers;
    }

    List<FateCount> fates() {
        var fates = new ArrayList<FateCount>(departures.size() + pools.size());
        for (var departure : departures) {
            if (departure.eggs > 0) {
                fates.add(departure.now());
            }
        }
        addStillIn(fates);
        return fates;
    }

    List<FateCount> atTheLamp() {
        var fates = new ArrayList<FateCount>(departures.size() + pools.size());
        for (var departure : departures) {
            if (departure.atTheLamp > 0) {
                fates.add(departure.seenAtTheLamp());
            }
        }
        addStillIn(fates);
        return fates;
    }

    private void addStillIn(List<FateCount> fates) {
        for (var pool : pools) {
            fates.add(new FateCount(pool.of(), pool.fate(), pool.eggs(), null, 0, 0));
        }
    }
}
