package eggwright.book.entry;

/** What lay on the scale. */
public enum WeighedWhat {
    WHOLE_TRAY,
    /** The same marked eggs each time. */
    MARKED_EGGS
}
