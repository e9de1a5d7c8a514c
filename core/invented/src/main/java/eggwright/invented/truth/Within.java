package eggwright.invented.truth;

import eggwright.units.OutOfRange;

/** Range checks of the truth, worded with the keys of its text. NaN is outside every range. */
final class Within {
    private Within() {}

    static void range(String key, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new OutOfRange(key + " is " + plain(value) + "; it runs from " + plain(low) + " to " + plain(high));
        }
    }

    static void pct(String key, double value) {
        range(key, value, 0, 100);
    }

    /** A logit beyond 10 is a certainty for every purpose of a farm. */
    static void logit(String key, double value) {
        range(key, value, -10, 10);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
