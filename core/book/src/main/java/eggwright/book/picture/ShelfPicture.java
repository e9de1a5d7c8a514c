package eggwright.book.picture;

import eggwright.book.entry.RejectReason;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * The egg room's account of one pen: gathered and received, less set, sold, eaten and discarded.
 *
 * @param stored what is there now, oldest first
 * @param gathered by the last lay date: kept and rejected
 * @param rejected by reason, over the season
 */
public record ShelfPicture(
        ShelfKey key,
        List<Stored> stored,
        SortedMap<LocalDate, Gathered> gathered,
        Map<RejectReason, Integer> rejected,
        int received,
        int set,
        int sold,
        int eaten,
        int discarded) {
    public ShelfPicture {
        stored = List.copyOf(stored);
        gathered = java.util.Collections.unmodifiableSortedMap(new java.util.TreeMap<>(gathered));
        rejected = Map.copyOf(rejected);
    }

    /** Kept and rejected of one day. */
    public record Gathered(int kept, int rejected) {}

    public int eggs() {
        return stored.stream().mapToInt(Stored::eggs).sum();
    }

    public int gatheredKept() {
        return gathered.values().stream().mapToInt(Gathered::kept).sum();
    }

    public int gatheredRejected() {
        return gathered.values().stream().mapToInt(Gathered::rejected).sum();
    }
}
