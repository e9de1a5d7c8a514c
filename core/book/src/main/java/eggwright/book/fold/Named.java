package eggwright.book.fold;

import eggwright.book.picture.Parcels;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What a count names of eggs of which only a sum is known: all of them or a part.
 *
 * @param spots those of its spots that the count speaks of
 * @param of those of its parcels that the count can speak of
 */
record Named<T extends Counted>(T from, List<Spot> spots, Parcels of) {
    /** Whether the count speaks of all of them, so that no less than their sum is known. */
    boolean isWhole() {
        return spots.size() == from.spots().size()
                && of.ids().size() == from.of().ids().size();
    }

    /** Whether only eggs of some pens of a mixed tray are meant. */
    private boolean isOfSomePens() {
        return Spot.parcels(spots)
                .within(from.of())
                .map(all -> all.ids().size() > of.ids().size())
                .orElse(false);
    }

    /** The parcels of those eggs that are not meant; empty where all are. */
    Optional<Parcels> othersMayBeOf() {
        var elsewhere = elsewhere();
        return from.of().only(id -> !of.holds(id) || elsewhere.stream().anyMatch(s -> s.of().holds(id)));
    }

    /** The spots of those eggs that are not meant. */
    List<Spot> othersMayBeIn() {
        return isOfSomePens() ? from.spots() : elsewhere();
    }

    private List<Spot> elsewhere() {
        return from.spots().stream().filter(s -> !spots.contains(s)).toList();
    }

    static <T extends Counted> boolean areWhole(Collection<Named<T>> many) {
        for (var named : many) {
            if (!named.isWhole()) {
                return false;
            }
        }
        return true;
    }

    static <T extends Counted> List<T> from(Collection<Named<T>> many) {
        var from = new ArrayList<T>(many.size());
        many.forEach(n -> from.add(n.from));
        return from;
    }

    static int eggs(Collection<? extends Named<?>> many) {
        int eggs = 0;
        for (var named : many) {
            eggs += named.from.eggs();
        }
        return eggs;
    }

    static int sum(Collection<? extends Counted> many) {
        int eggs = 0;
        for (var counted : many) {
            eggs += counted.eggs();
        }
        return eggs;
    }

    /** The spots and parcels of them all. */
    static <T extends Counted> Eggs together(Collection<Named<T>> many) {
        if (many.size() == 1) {
            var only = many.iterator().next();
            return new Eggs(only.spots, only.of);
        }
        var spots = new ArrayList<Spot>();
        var of = new ArrayList<Parcels>();
        for (var named : many) {
            spots.addAll(named.spots);
            of.add(named.of);
        }
        return new Eggs(Spot.distinct(spots), Parcels.union(of));
    }

    /** Eggs in some of these spots, of some of these parcels. */
    record Eggs(List<Spot> spots, Parcels of) {}
}
