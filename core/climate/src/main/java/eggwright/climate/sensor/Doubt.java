package eggwright.climate.sensor;

/** Why a reading is held back. It stays kept, can be seen, and a person can let it in. */
public enum Doubt {
    /** Outside what such a sensor can read. */
    IMPOSSIBLE,
    /** Far from the reading before it, in a time too short for a machine to change so much. */
    JUMP,
    /** The channel has another reading of the same instant. */
    SAME_INSTANT,
    /** A person set the sensor aside. Only taking the sensor back lets it in. */
    SET_ASIDE
}
