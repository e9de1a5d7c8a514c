package eggwright.climate.rollup;

import eggwright.climate.reading.Readings;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Silences of a sensor. */
public final class Gaps {
    /** A shorter silence is never a gap: ours. An egg mass hardly changes in it. */
    public static final Duration SHORTEST = Duration.ofMinutes(15);

    /** So many times the usual step: ours; one lost reading is no gap. */
    private static final int STEPS = 3;

    private Gaps() {}

    /** The longest step that is no gap: three times the middle step between readings, at least a quarter of an hour. */
    public static Duration longestStep(Readings readings) {
        if (readings.count() < 2) {
            return SHORTEST;
        }
        int some = Math.min(readings.count() - 1, 10_001);
        var steps = new long[some];
        for (int i = 0; i < some; i++) {
            int at = (int) ((long) i * (readings.count() - 1) / some);
            steps[i] = readings.millis(at + 1) - readings.millis(at);
        }
        Arrays.sort(steps);
        return Duration.ofMillis(Math.max(SHORTEST.toMillis(), STEPS * steps[some / 2]));
    }

    /** Between readings; what is before the first and after the last is not told. */
    public static List<Gap> of(Readings readings) {
        long longest = longestStep(readings).toMillis();
        var gaps = new ArrayList<Gap>();
        for (int i = 1; i < readings.count(); i++) {
            if (readings.millis(i) - readings.millis(i - 1) > longest) {
                gaps.add(new Gap(readings.at(i - 1), readings.at(i)));
            }
        }
        return gaps;
    }
}
