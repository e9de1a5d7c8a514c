package eggwright.rates.candler;

/** Why the clears that one look missed are not known. */
public enum NotTold {
    /** The look was at a part of the eggs, or some of the same lots lay elsewhere. */
    NOT_ALL_EGGS,
    /** Clears were seen and left in, so that those left in were not all missed. */
    CLEARS_LEFT_IN,
    /** Eggs are still in a machine. */
    STILL_IN,
    /** What was left after the last pull was not opened, or not to the last egg. */
    NOT_OPENED_AT_THE_END
}
