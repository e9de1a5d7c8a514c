package eggwright.climate.reading;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;

/**
 * What one channel read, in time order, in the channel's own unit. Immutable. Two readings of one instant both stay; the
 * very same reading twice is one.
 *
 * <p>{@link #and} is a union of sets: in any order, any number of times, the same readings come out.
 */
public final class Readings {
    public static final Readings NONE = new Readings(new long[0], new double[0]);

    private final long[] millis;
    private final double[] values;

    private Readings(long[] millis, double[] values) {
        this.millis = millis;
        this.values = values;
    }

    /**
     * In any order.
     *
     * @param millis milliseconds since 1970-01-01T00:00Z
     * @param values as many, none of them NaN
     */
    public static Readings of(long[] millis, double[] values) {
        return ofOwn(millis.clone(), values.clone(), millis.length);
    }

    /** Takes the arrays as they are; whoever gives them keeps no hand on them. */
    static Readings ofOwn(long[] millis, double[] values, int count) {
        boolean isStrict = isStrictlyInOrder(millis, count);
        if (isStrict && count == millis.length) {
            return new Readings(millis, values);
        }
        int kept = count;
        if (!isStrict) {
            if (!isInOrder(millis, values, count)) {
                sort(millis, values, count);
            }
            kept = once(millis, values, count);
        }
        return new Readings(Arrays.copyOf(millis, kept), Arrays.copyOf(values, kept));
    }

    private static int once(long[] millis, double[] values, int count) {
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (kept == 0 || millis[i] != millis[kept - 1] || !same(values[i], values[kept - 1])) {
                millis[kept] = millis[i];
                values[kept] = values[i];
                kept++;
            }
        }
        return kept;
    }

    /** Those of all, as {@link #and} joins them one by one. */
    public static Readings all(List<Readings> parts) {
        int count = 0;
        for (var part : parts) {
            count += part.count();
        }
        var millis = new long[count];
        var values = new double[count];
        int next = 0;
        for (var part : parts) {
            System.arraycopy(part.millis, 0, millis, next, part.count());
            System.arraycopy(part.values, 0, values, next, part.count());
            next += part.count();
        }
        return ofOwn(millis, values, count);
    }

    public static Readings of(Instant at, double value) {
        return new Readings(new long[] {at.toEpochMilli()}, new double[] {value});
    }

    public int count() {
        return millis.length;
    }

    public boolean isEmpty() {
        return millis.length == 0;
    }

    public long millis(int index) {
        return millis[index];
    }

    public Instant at(int index) {
        return Instant.ofEpochMilli(millis[index]);
    }

    public double value(int index) {
        return values[index];
    }

    /** Those of both. */
    public Readings and(Readings other) {
        if (isEmpty()) {
            return other;
        }
        if (other.isEmpty()) {
            return this;
        }
        int all = count() + other.count();
        var times = Arrays.copyOf(millis, all);
        var read = Arrays.copyOf(values, all);
        System.arraycopy(other.millis, 0, times, count(), other.count());
        System.arraycopy(other.values, 0, read, count(), other.count());
        return ofOwn(times, read, all);
    }

    /** From the first instant on, before the second. */
    public Readings between(long fromMillis, long toMillis) {
        int from = firstAt(fromMillis);
        int to = firstAt(toMillis);
        if (from == 0 && to == count()) {
            return this;
        }
        return from >= to
                ? NONE
                : new Readings(Arrays.copyOfRange(millis, from, to), Arrays.copyOfRange(values, from, to));
    }

    /** Index of the first reading at or after an instant; {@link #count} where there is none. */
    public int firstAt(long fromMillis) {
        int low = 0;
        int high = count();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (millis[middle] < fromMillis) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** No two of one instant: then none is there twice either. */
    private static boolean isStrictlyInOrder(long[] millis, int count) {
        for (int i = 1; i < count; i++) {
            if (millis[i - 1] >= millis[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean isInOrder(long[] millis, double[] values, int count) {
        for (int i = 1; i < count; i++) {
            if (compare(millis, values, i - 1, i) > 0) {
                return false;
            }
        }
        return true;
    }

    private static int compare(long[] millis, double[] values, int a, int b) {
        int byTime = Long.compare(millis[a], millis[b]);
        return byTime != 0 ? byTime : Double.compare(values[a], values[b]);
    }

    private static boolean same(double a, double b) {
        return Double.compare(a, b) == 0;
    }

    /** By a list of places, which costs memory: only what came out of order is sorted, and by the store a day at a time. */
    private static void sort(long[] millis, double[] values, int count) {
        var order = new Integer[count];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> compare(millis, values, a, b));
        var times = Arrays.copyOf(millis, count);
        var read = Arrays.copyOf(values, count);
        for (int i = 0; i < count; i++) {
            millis[i] = times[order[i]];
            values[i] = read[order[i]];
        }
    }

    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof Readings that
                && Arrays.equals(millis, that.millis)
                && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(millis) + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return count() + " readings" + (isEmpty() ? "" : " from " + at(0) + " to " + at(count() - 1));
    }
}
