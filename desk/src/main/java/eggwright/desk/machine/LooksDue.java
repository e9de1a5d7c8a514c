package eggwright.desk.machine;

import eggwright.book.picture.Picture;
import eggwright.climate.reading.ReadingPlace;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToLongFunction;

/**
 * How many sensors of a place to go and look at, remembered for a while: whether one sticks or drifts is a matter of days, and
 * sixty of them are read to tell. What a person says of a sensor is seen at once.
 */
final class LooksDue {
    private static final Duration HOLDS = Duration.ofMinutes(5);

    private final Map<ReadingPlace, Seen> seen = new ConcurrentHashMap<>();

    /** @param picture the very picture; another was made since if anything was noted */
    private record Seen(Picture picture, Instant at, long looks) {
        @SuppressWarnings(
                "ReferenceEquality") // A picture is made once for each state of the book, and costs more to compare.
        boolean holds(Picture now, Instant when) {
            return picture == now
                    && !when.isBefore(at)
                    && Duration.between(at, when).compareTo(HOLDS) < 0;
        }
    }

    long of(ReadingPlace place, Picture picture, Instant at, ToLongFunction<ReadingPlace> count) {
        var known = seen.get(place);
        if (known != null && known.holds(picture, at)) {
            return known.looks();
        }
        long looks = count.applyAsLong(place);
        seen.put(place, new Seen(picture, at, looks));
        return looks;
    }
}
