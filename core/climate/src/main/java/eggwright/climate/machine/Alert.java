package eggwright.climate.machine;

import eggwright.climate.excursion.Excursion;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.rollup.Band;
import java.time.Instant;

/**
 * A place that is outside its band, by its own sensor.
 *
 * @param since when it left the band
 * @param lastCelsius of the air, when it was last read
 * @param lastAt when that was
 */
public record Alert(
        ReadingPlace place,
        Excursion.Kind kind,
        Hearing hearing,
        Instant since,
        double lastCelsius,
        Instant lastAt,
        Band band) {
    /** Whether its sensor is heard. */
    public enum Hearing {
        NOW,
        /** It was outside when it was last heard, and has been silent since. */
        SILENT_SINCE
    }
}
