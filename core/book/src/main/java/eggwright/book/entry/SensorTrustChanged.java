package eggwright.book.entry;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A sensor is set aside from a moment on, or taken back.
 *
 * @param from absent: from when it was noted
 */
public record SensorTrustChanged(
        SensorAt sensor, SensorTrust trust, @Nullable OffsetDateTime from, String why) implements Payload {
    public SensorTrustChanged {
        why = Checks.text("Why", why);
        Checks.year("Since when", from);
    }
}
