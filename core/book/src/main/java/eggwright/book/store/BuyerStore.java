package eggwright.book.store;

import eggwright.book.name.BuyerNumber;
import java.util.List;
import java.util.Optional;

/**
 * Names and addresses behind buyer numbers, kept apart from the entries so that they can be erased. Safe for use by many
 * threads.
 */
public interface BuyerStore {
    /** All buyers, by number. */
    List<Buyer> all();

    /** One buyer; empty where never noted, or erased. */
    Optional<Buyer> find(BuyerNumber number);

    /** Notes a buyer, in the place of what was noted under the number before. */
    Change keep(Buyer buyer);

    /** Erases name, address and note for good; entries keep the bare number. */
    Change erase(BuyerNumber number);

    /** What became of a change. */
    sealed interface Change {
        /** Done, durably. */
        record Done() implements Change {}

        /** There was nobody to erase. */
        record WasNotThere() implements Change {}

        /** The medium could not keep it: full, read-only or gone. */
        record NotSaved(String reason) implements Change {}
    }
}
