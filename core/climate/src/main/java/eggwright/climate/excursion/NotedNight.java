package eggwright.climate.excursion;

import eggwright.climate.development.Warmth;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * The air of a night that no sensor saw: as far from the set-point as it went, from the first moment to the last, then as
 * before. What eggs felt is then overstated, and the range says so.
 */
public final class NotedNight {
    /** So long after the night the eggs are warm again, for any of the three ways they may follow. */
    private static final Duration AFTER = Duration.ofHours(24);

    private static final Duration BEFORE = Duration.ofHours(1);

    private NotedNight() {}

    public static List<Warmth> air(Instant from, Instant to, double reachedCelsius, double setPointCelsius) {
        return List.of(
                new Warmth(from.minus(BEFORE), from, setPointCelsius),
                new Warmth(from, to, reachedCelsius),
                new Warmth(to, to.plus(AFTER), setPointCelsius));
    }
}
