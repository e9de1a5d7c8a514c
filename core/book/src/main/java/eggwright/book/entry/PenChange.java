package eggwright.book.entry;

/** What changed in a pen. */
public enum PenChange {
    BIRDS_IN,
    BIRDS_OUT,
    DIED,
    /** These many cocks replaced others; eggs of the next three weeks have mixed sires. */
    COCKS_EXCHANGED,
    /** A head count: these are the birds in the pen now. */
    COUNTED
}
