package eggwright.book.picture;

/** Names the eggs of one lot in one load, counted from 0 in the order they were noted. */
public record ParcelId(LoadRef load, int lot) implements Comparable<ParcelId> {
    @Override
    public int compareTo(ParcelId other) {
        int order = load.compareTo(other.load);
        return order != 0 ? order : Integer.compare(lot, other.lot);
    }
}
