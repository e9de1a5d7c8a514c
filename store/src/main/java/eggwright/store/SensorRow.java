package eggwright.store;

import eggwright.climate.reading.Channel;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A sensor that sends by itself.
 *
 * @param sensor its id, never used again
 * @param channel all that it may add to
 * @param tokenSha256 64 hex digits; the token itself is only in the sensor
 * @param revoked when its token was revoked; null while it holds
 */
public record SensorRow(
        String sensor,
        Channel channel,
        String tokenSha256,
        Instant added,
        @Nullable Instant revoked) {}
