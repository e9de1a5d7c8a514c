package eggwright.book.store;

import eggwright.book.entry.Kept;

/** What became of an entry that was offered to the book. */
public sealed interface Outcome {
    /** New, and now in the book, durably. */
    record Added(Kept kept) implements Outcome {}

    /** The same entry, sent again; nothing changed. */
    record KeptBefore(Kept kept) implements Outcome {}

    /** Not in the book; still with whoever offered it. */
    record Refused(Refusal why) implements Outcome {}
}
