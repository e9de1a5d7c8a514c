package eggwright.intake.message;

import eggwright.intake.sensor.Sensor;
import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.Map;

/**
 * Holds each sensor to {@value #MOST} messages a minute, and all who have no token together to as many: each message
 * costs a write to the disk. Who has a token is never kept waiting by who has none.
 */
final class Often {
    /** One a second, which is more than any machine changes. */
    static final int MOST = 60;

    private final TimeMeter meter;
    private final Bucket nobody;
    private final Map<String, Bucket> each = new HashMap<>();

    Often(InstantSource clock) {
        this.meter = meter(clock);
        this.nobody = bucket();
    }

    synchronized boolean isTooOften(Sensor sensor) {
        return !each.computeIfAbsent(sensor.id(), id -> bucket()).tryConsume(1);
    }

    synchronized boolean isTooOften() {
        return !nobody.tryConsume(1);
    }

    private Bucket bucket() {
        return Bucket.builder()
                .withCustomTimePrecision(meter)
                .addLimit(Bandwidth.builder()
                        .capacity(2L * MOST)
                        .refillGreedy(MOST, Duration.ofMinutes(1))
                        .build())
                .build();
    }

    private static TimeMeter meter(InstantSource clock) {
        return new TimeMeter() {
            @Override
            public long currentTimeNanos() {
                return Duration.between(Instant.EPOCH, clock.instant()).toNanos();
            }

            @Override
            public boolean isWallClockBased() {
                return true;
            }
        };
    }
}
