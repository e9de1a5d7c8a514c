package eggwright.book.picture;

import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.TreeSet;

/**
 * Parcels whose eggs can no longer be told apart: a count speaks of all of them together. Sorted, without repeats, at
 * least one.
 */
public record Parcels(List<ParcelId> ids) implements Comparable<Parcels>, Iterable<ParcelId> {
    public Parcels {
        ids = List.copyOf(new TreeSet<>(ids));
        if (ids.isEmpty()) {
            throw new IllegalArgumentException("A count speaks of at least one parcel");
        }
    }

    public static Parcels of(ParcelId only) {
        return new Parcels(List.of(only));
    }

    public static Parcels union(Collection<Parcels> many) {
        return new Parcels(many.stream().flatMap(p -> p.ids().stream()).toList());
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
