package eggwright.book.picture;

/** Where a fate was learnt. */
public enum FateSort {
    /** Seen through the shell. */
    LAMP,
    /** The egg was opened. */
    OPENED,
    TAKE_OFF,
    STILL_IN,
    UNACCOUNTED
}
