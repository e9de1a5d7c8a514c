package eggwright.book.picture;

import eggwright.book.name.EntryId;
import java.util.List;

/**
 * Entries that contradict each other, or the picture so far.
 *
 * @param entries the entry that brought it up, first, and those it contradicts
 * @param about the set, tray, pen or order, in words such as "set 14, tray 7"
 * @param counted what the entry says, where a number is at stake; otherwise 0
 * @param held what the book held, where a number is at stake; otherwise 0
 * @param what the finding, fate or field in question; empty where the kind says all
 */
public record Discrepancy(
        DiscrepancyKind kind, List<EntryId> entries, String about, int counted, int held, String what) {
    public Discrepancy {
        entries = List.copyOf(entries);
    }
}
