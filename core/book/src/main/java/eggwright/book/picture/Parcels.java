package eggwright.book.picture;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Parcels whose eggs can no longer be told apart: a count speaks of all of them together. Sorted, without repeats, at
 * least one.
 */
public record Parcels(List<ParcelId> ids) implements Comparable<Parcels>, Iterable<ParcelId> {
    public Parcels {
        ids = isSorted(ids) ? List.copyOf(ids) : List.copyOf(new TreeSet<>(ids));
        if (ids.isEmpty()) {
            throw new IllegalArgumentException("A count speaks of at least one parcel");
        }
    }

    private static boolean isSorted(List<ParcelId> ids) {
        for (int i = 1; i < ids.size(); i++) {
            if (ids.get(i - 1).compareTo(ids.get(i)) >= 0) {
                return false;
            }
        }
        return true;
    }

    public static Parcels of(ParcelId only) {
        return new Parcels(List.of(only));
    }

    public static Parcels union(Collection<Parcels> many) {
        var all = new ArrayList<ParcelId>();
        many.forEach(p -> all.addAll(p.ids));
        return new Parcels(all);
    }

    public boolean holds(ParcelId id) {
        return ids.contains(id);
    }

    /** Those that are among others too; empty where none is. */
    public Optional<Parcels> within(Parcels others) {
        return only(others::holds);
    }

    /** Those that are chosen; empty where none is. */
    public Optional<Parcels> only(Predicate<ParcelId> chosen) {
        var some = new ArrayList<ParcelId>(ids.size());
        for (var id : ids) {
            if (chosen.test(id)) {
                some.add(id);
            }
        }
        if (some.size() == ids.size()) {
            return Optional.of(this);
        }
        return some.isEmpty() ? Optional.empty() : Optional.of(new Parcels(some));
    }

    @Override
    public Iterator<ParcelId> iterator() {
        return ids.iterator();
    }

    @Override
    public int compareTo(Parcels other) {
        for (int i = 0; i < Math.min(ids.size(), other.ids.size()); i++) {
            int order = ids.get(i).compareTo(other.ids.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(ids.size(), other.ids.size());
    }
}
