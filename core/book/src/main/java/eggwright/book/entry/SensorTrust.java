package eggwright.book.entry;

/** Whether a sensor is believed. */
public enum SensorTrust {
    /** Broken or moved away: what it reads is kept, and left out of everything. */
    SET_ASIDE,
    /** It counts again. */
    TAKEN_BACK
}
