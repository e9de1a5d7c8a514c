package eggwright.climate.development;

import eggwright.units.OutOfRange;
import java.time.Duration;
import java.time.Instant;

/** For how long something had a temperature: air, or an egg. Pieces of a history follow each other without overlap. */
public record Warmth(Instant from, Instant to, double celsius) {
    public Warmth {
        if (to.isBefore(from)) {
            throw new OutOfRange("A stretch from " + from + " to " + to + " runs backwards");
        }
        OutOfRange.check("Temperature", celsius, -50, 100, "°C");
    }

    Duration length() {
        return Duration.between(from, to);
    }

    /** The part of it between two instants; of no length where there is none. */
    Warmth within(Instant start, Instant end) {
        var first = from.isBefore(start) ? start : from;
        var last = to.isAfter(end) ? end : to;
        return new Warmth(first, last.isBefore(first) ? first : last, celsius);
    }
}
