package eggwright.book.picture;

import eggwright.book.entry.Scope;
import eggwright.book.name.EntryId;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.util.List;

/**
 * Entries that contradict each other, or the picture so far. Values only: whoever shows it finds the words.
 *
 * @param entries the entry that brought it up, first, and those it contradicts
 * @param about what it is about
 * @param counted what the entry says, where a number is at stake; otherwise 0
 * @param held what the book held, where a number is at stake; otherwise 0
 * @param what what was counted
 */
public record Discrepancy(DiscrepancyKind kind, List<EntryId> entries, About about, int counted, int held, What what) {
    public Discrepancy {
        entries = List.copyOf(entries);
    }

    /** What a discrepancy is about. */
    public sealed interface About {
        /** Eggs that were set, or the chicks of them. */
        record Eggs(Scope scope) implements About {}

        /** Eggs in the egg room. */
        record Shelf(ShelfKey key) implements About {}

        /** Birds of a pen. */
        record Birds(PenName pen) implements About {}

        /** Chicks after take-off. */
        record Chicks(Species species) implements About {}

        record Order(OrderNumber order) implements About {}

        /** The notes themselves. */
        record Notes() implements About {}
    }

    /** What was counted. */
    public sealed interface What {
        /** Eggs with this fate. */
        record OfFate(Fate fate) implements What {}

        /** Eggs that went somewhere. */
        enum Gone implements What {
            TRANSFERRED,
            MOVED,
            SET,
            SOLD,
            EATEN,
            DISCARDED
        }

        /** Birds that left. */
        enum OfBirds implements What {
            COCKS,
            HENS
        }

        /** Chicks that are no longer there. */
        enum OfChicks implements What {
            CHICKS_DIED,
            CHICKS_SOLD
        }

        /** The kind of discrepancy says all. */
        enum Untold implements What {
            UNTOLD
        }
    }
}
