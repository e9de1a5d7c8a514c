package eggwright.book.entry;

/** Whether more chicks of the same eggs are still expected. */
public enum Pull {
    MORE_TO_COME,
    /** What is left after this pull did not hatch. */
    LAST
}
