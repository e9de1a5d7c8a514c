package eggwright.climate.sensor;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.Readings;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds a sensor that is stuck now: that has said the very same since some time, up to its last reading.
 *
 * <p>The rules are ours; nobody printed any for hatcheries. A sensor of a tenth of a degree in a steady machine may well say the same
 * for hours, one of whole degrees for days. So it is held against itself: it is stuck where it has stayed {@value #TIMES} times as long
 * as it ever did before, and at least {@link #SHORTEST}, given {@link #HABIT_KNOWN} of what it did before. Where its
 * habit is not known, or it reads coarsely, only more than {@link #NEVER} counts: every machine is opened
 * at least once a week, for the set. Where a twin in the same place saw the air change by {@link #moved}, and by three of this
 * sensor's own steps, while it stayed, {@link #SHORTEST_BESIDE_TWIN} are enough; one that never changed is taken to read in steps of
 * {@link #UNSEEN_STEP}.
 */
public final class StuckCheck {
    static final int TIMES = 4;
    static final Duration SHORTEST = Duration.ofHours(24);
    static final Duration HABIT_KNOWN = Duration.ofDays(7);
    static final Duration NEVER = Duration.ofDays(8);
    static final Duration SHORTEST_BESIDE_TWIN = Duration.ofHours(2);
    /** One degree, percent or hectopascal: the coarsest in use (ours). */
    static final double UNSEEN_STEP = 1;

    /** A mean of the twin, over an hour or so, in standard units. */
    public record TwinMean(Instant from, Instant to, double mean) {}

    private record Stay(int from, int to, double value) {
        Duration length(Readings readings) {
            return Duration.ofMillis(readings.millis(to) - readings.millis(from));
        }
    }

    private StuckCheck() {}

    /**
     * Of readings that count.
     *
     * @param longestStep a longer silence ends a stay, for nobody knows what was in it
     * @param twin of another sensor of the same quantity in the same place, in time order; empty where there is none
     */
    public static Optional<Stuck> of(Channel channel, Readings readings, Duration longestStep, List<TwinMean> twin) {
        var stays = stays(readings, longestStep.toMillis());
        if (stays.isEmpty()) {
            return Optional.empty();
        }
        var last = stays.getLast();
        var before = stays.subList(0, stays.size() - 1);
        var longest = before.stream()
                .map(s -> s.length(readings))
                .max(Duration::compareTo)
                .orElse(Duration.ZERO);
        var length = last.length(readings);
        var from = readings.at(last.from());
        double step = step(channel, before, last);
        double steps = 3 * (step == Double.POSITIVE_INFINITY ? UNSEEN_STEP : step);
        return why(channel, length, longest, Duration.between(readings.at(0), from), step)
                .or(() -> hasMoved(twin, from, readings.at(last.to()), Math.max(moved(channel.quantity()), steps))
                                && length.compareTo(SHORTEST_BESIDE_TWIN) >= 0
                        ? Optional.of(Stuck.Why.TWIN_MOVED)
                        : Optional.empty())
                .map(why -> new Stuck(last.value(), from, readings.at(last.to()), longest, why));
    }

    private static Optional<Stuck.Why> why(
            Channel channel, Duration length, Duration longest, Duration known, double step) {
        boolean isHabitKnown = known.compareTo(HABIT_KNOWN) >= 0 && step <= fine(channel.quantity());
        if (isHabitKnown && length.compareTo(SHORTEST) >= 0 && length.compareTo(longest.multipliedBy(TIMES)) >= 0) {
            return Optional.of(Stuck.Why.HABIT);
        }
        return length.compareTo(NEVER) > 0 && length.compareTo(longest.multipliedBy(2)) >= 0
                ? Optional.of(longest.isZero() ? Stuck.Why.NEVER_CHANGED : Stuck.Why.HABIT)
                : Optional.empty();
    }

    /** Steps up to which a sensor shows that air wavers: ours. */
    private static double fine(Quantity quantity) {
        return switch (quantity) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> 0.13;
            case HUMIDITY -> 1.01;
            case PRESSURE -> 0.11;
        };
    }

    /** So much a twin's hourly means differ only where the air changed: ours. */
    static double moved(Quantity quantity) {
        return switch (quantity) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> 1;
            case HUMIDITY -> 8;
            case PRESSURE -> 5;
        };
    }

    private static boolean hasMoved(List<TwinMean> twin, Instant from, Instant to, double least) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (var mean : twin) {
            if (!mean.from().isBefore(from) && !mean.to().isAfter(to)) {
                low = Math.min(low, mean.mean());
                high = Math.max(high, mean.mean());
            }
        }
        return high - low >= least;
    }

    /** The least by which one stay differs from the next: the step in which it reads, in standard units; infinite where none does. */
    private static double step(Channel channel, List<Stay> before, Stay last) {
        double least = Double.POSITIVE_INFINITY;
        double after = last.value();
        for (int i = before.size() - 1; i >= 0; i--) {
            double difference = Math.abs(
                    channel.unit().standardDifference(after - before.get(i).value()));
            if (difference > 0) {
                least = Math.min(least, difference);
            }
            after = before.get(i).value();
        }
        return least;
    }

    private static List<Stay> stays(Readings readings, long longestStep) {
        var stays = new ArrayList<Stay>();
        int from = 0;
        for (int i = 1; i <= readings.count(); i++) {
            if (i == readings.count()
                    || Double.compare(readings.value(i), readings.value(from)) != 0
                    || readings.millis(i) - readings.millis(i - 1) > longestStep) {
                stays.add(new Stay(from, i - 1, readings.value(from)));
                from = i;
            }
        }
        return stays;
    }
}
