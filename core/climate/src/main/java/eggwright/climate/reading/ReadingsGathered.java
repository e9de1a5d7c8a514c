package eggwright.climate.reading;

import java.util.Arrays;

/** Gathers readings one by one. Not safe for use by more than one thread. */
public final class ReadingsGathered {
    private static final int FIRST_ROOM = 64;

    private long[] millis = new long[FIRST_ROOM];
    private double[] values = new double[FIRST_ROOM];
    private int count;

    /** @param value in the channel's unit, not NaN */
    public void add(long atMillis, double value) {
        if (count == millis.length) {
            millis = Arrays.copyOf(millis, 2 * count);
            values = Arrays.copyOf(values, 2 * count);
        }
        millis[count] = atMillis;
        values[count] = value;
        count++;
    }

    public int count() {
        return count;
    }

    /** What was gathered; begins afresh. */
    public Readings take() {
        var taken = Readings.ofOwn(millis, values, count);
        count = 0;
        millis = new long[FIRST_ROOM];
        values = new double[FIRST_ROOM];
        return taken;
    }
}
