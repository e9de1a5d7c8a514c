package eggwright.book.entry;

/** What a farm's wet bulbs stand in: it decides how a wet bulb is read. */
public enum WetBulbAir {
    /** A fan blows over the wick. */
    MOVING,
    STILL
}
