package eggwright.climate.reading;

import java.io.ByteArrayOutputStream;

/**
 * Readings of one channel and one day (UTC) as bytes, and back without loss: some two to four bytes a reading.
 *
 * <p>Layout, version 1: the version (one byte); how many (varint); decimals of the values, 0 to {@value #MOST_DECIMALS},
 * or {@value #WHOLE_DOUBLES} where they have more (one byte); times as milliseconds of the day, of which the first stands as it is, then how much
 * each step differs from the step before; values as whole numbers of the last decimal, each as a difference from the one before, or as eight bytes. Numbers are
 * varints of seven bits a byte, least first; differences are folded so that small ones of either sign are short.
 */
public final class DayCodec {
    public static final long DAY_MILLIS = 86_400_000L;

    private static final int VERSION = 1;
    private static final int MOST_DECIMALS = 6;
    private static final int WHOLE_DOUBLES = 255;
    /** Below this a whole number and its double are the same, with room to subtract. */
    private static final double MOST_WHOLE = 1e15;

    private DayCodec() {}

    /**
     * The day that holds an instant, counted from 1970-01-01 in UTC.
     */
    public static long dayOf(long millis) {
        return Math.floorDiv(millis, DAY_MILLIS);
    }

    /** @param readings all of the one day */
    public static byte[] write(long day, Readings readings) {
        var out = new ByteArrayOutputStream(16 + 4 * readings.count());
        out.write(VERSION);
        varint(out, readings.count());
        int decimals = decimals(readings);
        out.write(decimals);
        long start = day * DAY_MILLIS;
        long before = start;
        long stepBefore = 0;
        for (int i = 0; i < readings.count(); i++) {
            long step = readings.millis(i) - before;
            varint(out, i == 0 ? step : folded(step - stepBefore));
            before = readings.millis(i);
            stepBefore = i == 0 ? 0 : step;
        }
        values(out, readings, decimals);
        return out.toByteArray();
    }

    private static void values(ByteArrayOutputStream out, Readings readings, int decimals) {
        if (decimals == WHOLE_DOUBLES) {
            for (int i = 0; i < readings.count(); i++) {
                long bits = Double.doubleToLongBits(readings.value(i));
                for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
                    out.write((int) (bits >>> shift));
                }
            }
            return;
        }
        double scale = scale(decimals);
        long before = 0;
        for (int i = 0; i < readings.count(); i++) {
            long whole = Math.round(readings.value(i) * scale);
            varint(out, folded(whole - before));
            before = whole;
        }
    }

    /**
     * @throws IllegalArgumentException if the bytes are not of this form; a store answers that its file is damaged
     */
    public static Readings read(long day, byte[] bytes) {
        var in = new Reader(bytes);
        if (in.one() != VERSION) {
            throw new IllegalArgumentException("Readings of version " + bytes[0] + " are not known here");
        }
        int count = Math.toIntExact(in.varint());
        if (count < 0 || count > bytes.length) {
            throw new IllegalArgumentException("A day of " + count + " readings does not fit into its bytes");
        }
        int decimals = in.one();
        var millis = new long[count];
        var values = new double[count];
        long at = day * DAY_MILLIS;
        long step = 0;
        for (int i = 0; i < count; i++) {
            if (i == 0) {
                at += in.varint();
            } else {
                step += unfolded(in.varint());
                at += step;
            }
            millis[i] = at;
        }
        if (decimals == WHOLE_DOUBLES) {
            for (int i = 0; i < count; i++) {
                values[i] = Double.longBitsToDouble(in.eight());
            }
        } else {
            double scale = scale(decimals);
            long whole = 0;
            for (int i = 0; i < count; i++) {
                whole += unfolded(in.varint());
                values[i] = whole / scale;
            }
        }
        return Readings.ofOwn(millis, values, count);
    }

    /** The fewest decimals that give every value back digit for digit. */
    private static int decimals(Readings readings) {
        int decimals = 0;
        for (int i = 0; i < readings.count(); i++) {
            double value = readings.value(i);
            while (decimals <= MOST_DECIMALS && !fits(value, decimals)) {
                decimals++;
            }
        }
        return decimals > MOST_DECIMALS ? WHOLE_DOUBLES : decimals;
    }

    private static boolean fits(double value, int decimals) {
        double scaled = value * scale(decimals);
        // Compared bit for bit, so that minus zero and whatever is not finite go the long way.
        return Math.abs(scaled) < MOST_WHOLE
                && Double.doubleToLongBits(Math.round(scaled) / scale(decimals)) == Double.doubleToLongBits(value);
    }

    private static double scale(int decimals) {
        return switch (decimals) {
            case 0 -> 1;
            case 1 -> 10;
            case 2 -> 100;
            case 3 -> 1_000;
            case 4 -> 10_000;
            case 5 -> 100_000;
            case MOST_DECIMALS -> 1_000_000;
            default -> throw new IllegalArgumentException("Values of " + decimals + " decimals are not known here");
        };
    }

    private static long folded(long number) {
        return (number << 1) ^ (number >> (Long.SIZE - 1));
    }

    private static long unfolded(long number) {
        return (number >>> 1) ^ -(number & 1);
    }

    private static void varint(ByteArrayOutputStream out, long number) {
        long left = number;
        while ((left & ~0x7FL) != 0) {
            out.write((int) (left & 0x7F) | 0x80);
            left >>>= 7;
        }
        out.write((int) left);
    }

    /** Steps through the bytes; their end is found before it is passed. */
    private static final class Reader {
        private final byte[] bytes;
        private int next;

        Reader(byte[] bytes) {
            this.bytes = bytes;
        }

        int one() {
            if (next == bytes.length) {
                throw new IllegalArgumentException("The readings of a day end too early");
            }
            return bytes[next++] & 0xFF;
        }

        long varint() {
            long number = 0;
            for (int shift = 0; shift < Long.SIZE; shift += 7) {
                int part = one();
                number |= (long) (part & 0x7F) << shift;
                if ((part & 0x80) == 0) {
                    return number;
                }
            }
            throw new IllegalArgumentException("A number in the readings of a day has no end");
        }

        long eight() {
            long bits = 0;
            for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
                bits |= (long) one() << shift;
            }
            return bits;
        }
    }
}
