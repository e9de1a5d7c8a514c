package eggwright.climate.reading;

import eggwright.book.name.MachineName;

/** Where a sensor hangs. The egg room and the brooder take readings like machines. */
public sealed interface ReadingPlace {
    /** A setter or a hatcher. */
    record InMachine(MachineName machine) implements ReadingPlace {}

    /** Where eggs wait to be set. */
    record EggRoom() implements ReadingPlace {}

    /** Where chicks go after take-off. */
    record Brooder() implements ReadingPlace {}
}
