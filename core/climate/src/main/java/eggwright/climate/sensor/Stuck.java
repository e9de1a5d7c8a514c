package eggwright.climate.sensor;

import java.time.Duration;
import java.time.Instant;

/**
 * A sensor that says the same for longer than such a sensor in such air does.
 *
 * @param value what it says, in the channel's own unit
 * @param from since when
 * @param to when it said so last
 * @param longestBefore the longest that it had stayed on one value before
 * @param why what gives it away
 */
public record Stuck(double value, Instant from, Instant to, Duration longestBefore, Why why) {
    /** What gives it away. */
    public enum Why {
        /** Its own habit: it always changed sooner. */
        HABIT,
        /** Its twin saw the air change meanwhile. */
        TWIN_MOVED,
        /** It was never seen to change. */
        NEVER_CHANGED
    }

    public Duration lasted() {
        return Duration.between(from, to);
    }
}
