package eggwright.intake.sensor;

import eggwright.climate.reading.Channel;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A sensor that sends its readings by itself.
 *
 * @param id never used again
 * @param channel where it hangs, its name, what it measures and in which unit: all that it may add to
 * @param tokenSha256 64 hex digits; the token itself is only in the sensor
 * @param revoked when its token was revoked; null while it holds
 */
public record Sensor(
        String id,
        Channel channel,
        String tokenSha256,
        Instant added,
        @Nullable Instant revoked) {
    public boolean mayTell() {
        return revoked == null;
    }

    public String name() {
        return channel.sensor().text();
    }

    Sensor revokedAt(Instant now) {
        return new Sensor(id, channel, tokenSha256, added, now);
    }
}
