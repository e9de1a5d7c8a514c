package eggwright.book.entry;

/** What went wrong. */
public enum IncidentKind {
    POWER_CUT,
    TOO_HOT,
    TOO_COLD,
    /** A door that was left open. */
    DOOR_OPEN,
    FAN_STOPPED,
    TURNER_STOPPED,
    WATER_OUT,
    DROPPED,
    SIGNS_OF_DISEASE,
    OTHER
}
