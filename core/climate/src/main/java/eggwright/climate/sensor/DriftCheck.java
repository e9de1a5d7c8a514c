package eggwright.climate.sensor;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Whether a sensor drifts against its twin, or away from what is read by hand. Medians, so that no door, no hatch and no night of
 * half the days or less can move them (breakdown point one half: Huber, Robust Statistics, 1981); the tolerance is from published
 * accuracies ({@link Accuracy}).
 */
public final class DriftCheck {
    /** Fewer hours in common tell nothing of a day: ours. */
    static final int HOURS_OF_A_DAY = 6;
    /** So many days at the beginning, and so many at the end: a week, of which a hatch is less than half (ours). */
    static final int DAYS = 7;
    /** So many readings by hand: ours. All but one of them have to be off to the same side. */
    static final int BY_HAND = 5;

    private static final int MOST_BY_HAND = 9;
    private static final long DAY_MILLIS = 86_400_000L;
    /** So many times the scatter from day to day a shift has to be: the usual three of control charts. */
    private static final double SCATTERS = 3;
    /** The standard deviation of a normal scatter is so many times its median absolute deviation (Huber 1981). */
    private static final double MAD_TO_SD = 1.4826;

    /** Whether both twins were held against a reference. What they then differ by all the while is the air's. */
    public enum Known {
        NOT_BOTH_COMPARED,
        BOTH_COMPARED
    }

    /** At one moment: the first instrument less the second, in standard units. */
    public record Difference(Instant at, double value) {}

    private DriftCheck() {}

    /**
     * Against a twin. The median of each day; then the middle of the last {@value #DAYS} days against the middle of the first. Scatter is
     * that of the steps from day to day, which a slow drift hardly moves.
     *
     * @param hourly differences of the hours that both read, corrected, in time order
     */
    public static Optional<Drift> ofTwins(List<Difference> hourly, double tolerance, Known known) {
        var days = medianOfDays(hourly);
        if (days.size() < DAYS) {
            return Optional.empty();
        }
        double now = median(days.subList(days.size() - DAYS, days.size()));
        double needed = Math.max(tolerance, SCATTERS * scatter(days));
        double before = median(days.subList(0, DAYS));
        var from = hourly.getFirst().at();
        if (days.size() >= 2 * DAYS && Math.abs(now - before) > needed) {
            return Optional.of(new Drift(Drift.Kind.SHIFTED, before, now, tolerance, from, days.size()));
        }
        return known == Known.NOT_BOTH_COMPARED && Math.abs(now) > needed
                ? Optional.of(new Drift(Drift.Kind.APART, before, now, tolerance, from, days.size()))
                : Optional.empty();
    }

    /**
     * Against readings by hand: the median of the last few is beyond the tolerance, and all but one lie to the same side.
     *
     * @param byHand sensor, corrected, less what was read by hand at the moment, in time order
     */
    public static Optional<Drift> fromHand(List<Difference> byHand, double tolerance) {
        var last = byHand.subList(Math.max(0, byHand.size() - MOST_BY_HAND), byHand.size());
        if (last.size() < BY_HAND) {
            return Optional.empty();
        }
        double now = median(last.stream().map(Difference::value).toList());
        long same = last.stream().filter(d -> d.value() * now > 0).count();
        return Math.abs(now) > tolerance && same >= last.size() - 1
                ? Optional.of(new Drift(
                        Drift.Kind.APART, now, now, tolerance, last.getFirst().at(), last.size()))
                : Optional.empty();
    }

    private static List<Double> medianOfDays(List<Difference> hourly) {
        Map<Long, List<Double>> byDay = new TreeMap<>();
        for (var one : hourly) {
            byDay.computeIfAbsent(Math.floorDiv(one.at().toEpochMilli(), DAY_MILLIS), d -> new ArrayList<>())
                    .add(one.value());
        }
        return byDay.values().stream()
                .filter(day -> day.size() >= HOURS_OF_A_DAY)
                .map(DriftCheck::median)
                .toList();
    }

    /** Of one day, robustly: a step from day to day holds the scatter of two. */
    private static double scatter(List<Double> days) {
        var steps = new ArrayList<Double>();
        for (int i = 1; i < days.size(); i++) {
            steps.add(Math.abs(days.get(i) - days.get(i - 1)));
        }
        return MAD_TO_SD * median(steps) / Math.sqrt(2);
    }

    static double median(List<Double> values) {
        var sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
