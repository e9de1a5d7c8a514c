package eggwright.book.entry;

/** A look that is not the usual one. */
public enum LookSort {
    /** By another person who was not told what the first one saw; it marks and takes nothing out. */
    SECOND_BLIND
}
