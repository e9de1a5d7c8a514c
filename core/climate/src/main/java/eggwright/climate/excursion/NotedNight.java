package eggwright.climate.excursion;

import eggwright.climate.development.Warmth;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * The air of a power cut that nobody measured: at the room's temperature from the first moment to the last, which is colder
 * than any machine gets, then warm again. What eggs felt is then overstated for a few eggs, and the range says so.
 */
public final class NotedNight {
    /** So long after the night the eggs are warm again, for any of the three ways they may follow. */
    private static final Duration AFTER = Duration.ofHours(24);

    private static final Duration BEFORE = Duration.ofHours(1);

    private NotedNight() {}

    public static List<Warmth> air(Instant from, Instant to, double roomCelsius, double setPointCelsius) {
        return List.of(
                new Warmth(from.minus(BEFORE), from, setPointCelsius),
                new Warmth(from, to, roomCelsius),
                new Warmth(to, to.plus(AFTER), setPointCelsius));
    }
}
