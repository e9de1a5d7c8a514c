package eggwright.book.store;

/** Why an entry was not taken into the book. */
public sealed interface Refusal {
    /** The same id is in the book with other content; nothing was overwritten. */
    record OtherContent(eggwright.book.entry.Entry inTheBook, eggwright.book.entry.Entry offered) implements Refusal {}

    /** The entry is of another farm. */
    record OtherFarm(eggwright.book.name.FarmId ours, eggwright.book.name.FarmId offered) implements Refusal {}

    /** The medium could not keep it: full, read-only or gone. */
    record NotSaved(String reason) implements Refusal {}
}
