package eggwright.climate.air;

/** How it is known. */
public enum KnownBy {
    /** Sensors. */
    READINGS,
    /** Somebody read the thermometers and noted it. */
    HAND,
    /** Nobody read it: the set-point is taken. */
    SET_POINT
}
