package eggwright.climate.rollup;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Readings;
import eggwright.climate.sensor.Corrections;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rolls readings up, in one pass. Calibration is applied here and nowhere before; readings held back have been left out by
 * whoever calls.
 */
public final class Rollups {
    private final Corrections corrections;
    private final Cut cut;
    /** Absent where nothing is outside. */
    private final @Nullable Band band;

    private final List<Rollup> rolled = new ArrayList<>();
    private long start;
    private long end = Long.MIN_VALUE;
    private int count;
    private double sum;
    private double min;
    private double max;
    private long known;
    private long outside;
    /** Until when the last reading speaks; it may reach into the next stretch. */
    private long speaksUntil = Long.MIN_VALUE;

    private boolean lastIsOutside;

    private Rollups(Corrections corrections, Cut cut, @Nullable Band band) {
        this.corrections = corrections;
        this.cut = cut;
        this.band = band;
    }

    /**
     * Only stretches that hold a reading are given.
     *
     * @param band absent: nothing is outside
     */
    public static List<Rollup> of(
            Channel channel, Readings good, Corrections corrections, Cut cut, @Nullable Band band) {
        var rollups = new Rollups(corrections, cut, band);
        long longest = Gaps.longestStep(good).toMillis();
        int last = good.count() - 1;
        for (int i = 0; i <= last; i++) {
            long at = good.millis(i);
            long until = i == last ? at : Math.min(good.millis(i + 1), at + longest);
            rollups.one(at, channel.unit().standard(good.value(i)), until);
        }
        rollups.finish();
        return rollups.rolled;
    }

    private void one(long at, double read, long until) {
        if (at >= end) {
            finish();
            start = cut.startOf(at);
            end = cut.endOf(start);
            speak(start, Math.min(speaksUntil, at), lastIsOutside);
        }
        double value = corrections.inOrder().isEmpty() ? read : read + corrections.at(at);
        min = count == 0 ? value : Math.min(min, value);
        max = count == 0 ? value : Math.max(max, value);
        sum += value;
        count++;
        lastIsOutside = band != null && !band.holds(value);
        speaksUntil = until;
        speak(at, Math.min(until, end), lastIsOutside);
    }

    private void speak(long from, long to, boolean isOutside) {
        long speaks = to > from ? to - from : 0;
        known += speaks;
        outside += isOutside ? speaks : 0;
    }

    private void finish() {
        if (count == 0) {
            return;
        }
        rolled.add(new Rollup(
                Instant.ofEpochMilli(start),
                Instant.ofEpochMilli(end),
                count,
                min,
                sum / count,
                max,
                Duration.ofMillis(known),
                Duration.ofMillis(outside)));
        count = 0;
        sum = 0;
        known = 0;
        outside = 0;
    }
}
