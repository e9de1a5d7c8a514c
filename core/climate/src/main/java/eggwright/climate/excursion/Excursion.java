package eggwright.climate.excursion;

import java.time.Duration;
import java.time.Instant;

/**
 * A machine was outside its band.
 *
 * @param extremeCelsius of the air, the farthest from the band
 */
public record Excursion(Kind kind, Instant from, Instant to, double extremeCelsius) {
    /** Which way. */
    public enum Kind {
        COLD,
        HOT
    }

    public Duration length() {
        return Duration.between(from, to);
    }
}
