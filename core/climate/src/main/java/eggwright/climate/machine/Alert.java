package eggwright.climate.machine;

import eggwright.climate.excursion.Excursion;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.rollup.Band;
import java.time.Instant;

/**
 * A place that is outside its band now, by its own sensor.
 *
 * @param since when it left the band
 * @param lastCelsius of the air, when it was last read
 * @param lastAt when that was
 */
public record Alert(
        ReadingPlace place, Excursion.Kind kind, Instant since, double lastCelsius, Instant lastAt, Band band) {}
