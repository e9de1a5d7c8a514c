package eggwright.climate.sensor;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A person set the sensor aside: what it read from one instant on, before another, is kept and left out.
 *
 * @param to absent where it was not taken back
 */
public record Aside(Instant from, @Nullable Instant to) {
    public boolean covers(long millis) {
        return millis >= from.toEpochMilli() && (to == null || millis < to.toEpochMilli());
    }
}
