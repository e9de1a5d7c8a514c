package eggwright.book.entry;

/** Where an entry came from; decides when it counts as known. */
public enum Origin {
    /** Noted by a person at the lamp or at the desk; known from the instant it was received. */
    NOTED,
    /** A row of a past season's sheet; known from the row's own date. */
    IMPORTED
}
