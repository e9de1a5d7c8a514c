package eggwright.climate.sensor;

import java.time.Instant;

/** A person looked at what was held back from one instant to another, both included, and lets it in. */
public record Released(Instant from, Instant to) {
    boolean covers(long millis) {
        return millis >= from.toEpochMilli() && millis <= to.toEpochMilli();
    }
}
