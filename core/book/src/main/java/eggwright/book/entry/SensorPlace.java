package eggwright.book.entry;

/** Where a sensor hangs. */
public enum SensorPlace {
    IN_MACHINE,
    EGG_ROOM,
    BROODER
}
