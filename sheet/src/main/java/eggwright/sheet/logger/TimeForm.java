package eggwright.sheet.logger;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * How a file writes its times. Read by hand and not by a formatter, for a season has millions of them: numbers parted by
 * anything, in one of three orders, with or without AM, PM, seconds, fractions and an offset.
 */
public enum TimeForm {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST,
    /** Seconds since 1970, in UTC. */
    SECONDS,
    /** Milliseconds since 1970, in UTC. */
    MILLISECONDS;

    private static final int MOST_PARTS = 7;
    private static final int NO_OFFSET = Integer.MIN_VALUE;
    private static final int YEARS_OF_TWO_DIGITS = 2000;
    private static final long FIRST_SECOND = 946_684_800L;
    private static final long LAST_SECOND = 4_102_444_800L;

    /**
     * A time as written.
     *
     * @param local without its zone
     * @param offset where one was written
     */
    record Written(LocalDateTime local, Optional<ZoneOffset> offset) {}

    /** Reads a time; empty where the text is no time of this form between 2000 and 2099. */
    Optional<Written> read(String text) {
        return switch (this) {
            case SECONDS -> epoch(text, 1_000);
            case MILLISECONDS -> epoch(text, 1);
            case YEAR_FIRST, DAY_FIRST, MONTH_FIRST -> calendar(text);
        };
    }

    private static Optional<Written> epoch(String text, long millisEach) {
        try {
            double number = Double.parseDouble(text);
            double millis = number * millisEach;
            if (!(millis >= FIRST_SECOND * 1e3 && millis < LAST_SECOND * 1e3)) {
                return Optional.empty();
            }
            long whole = Math.round(millis);
            return Optional.of(new Written(
                    LocalDateTime.ofEpochSecond(
                            Math.floorDiv(whole, 1000L), (int) Math.floorMod(whole, 1000L) * 1_000_000, ZoneOffset.UTC),
                    Optional.of(ZoneOffset.UTC)));
        } catch (NumberFormatException none) {
            return Optional.empty();
        }
    }

    private Optional<Written> calendar(String text) {
        var parts = new int[MOST_PARTS];
        int count = 0;
        int offsetSeconds = NO_OFFSET;
        int half = 0;
        int at = 0;
        int length = text.length();
        while (at < length) {
            char c = text.charAt(at);
            if (c >= '0' && c <= '9') {
                if (count == MOST_PARTS) {
                    return Optional.empty();
                }
                int from = at;
                int number = 0;
                while (at < length && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
                    if (at - from < 9) {
                        number = number * 10 + (text.charAt(at) - '0');
                    }
                    at++;
                }
                // A fraction of a second: milliseconds, whatever its length.
                parts[count] = count == 6 ? millis(text, from, at) : number;
                count++;
            } else if ((c == '+' || (c == '-' && count >= 5)) && count >= 4) {
                var offset = offset(text, at);
                if (offset.isEmpty()) {
                    return Optional.empty();
                }
                offsetSeconds = offset.get();
                at = length;
            } else if (c == 'Z' && at == length - 1) {
                offsetSeconds = 0;
                at++;
            } else if (isHalf(text, at)) {
                half = c == 'a' || c == 'A' ? 1 : 2;
                at += text.startsWith(".", at + 1) ? 4 : 2;
            } else if (c == ' ' || c == '-' || c == '/' || c == '.' || c == ':' || c == 'T' || c == ',') {
                at++;
            } else {
                return Optional.empty();
            }
        }
        return count < 5 ? Optional.empty() : written(parts, half, offsetSeconds);
    }

    private Optional<Written> written(int[] parts, int half, int offsetSeconds) {
        int year = parts[this == YEAR_FIRST ? 0 : 2];
        int month = parts[this == MONTH_FIRST ? 0 : 1];
        int day = parts[this == YEAR_FIRST ? 2 : this == DAY_FIRST ? 0 : 1];
        int hour = parts[3];
        if (half != 0) {
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            hour = hour % 12 + (half == 2 ? 12 : 0);
        }
        int fullYear = year < 100 && this != YEAR_FIRST ? year + YEARS_OF_TWO_DIGITS : year;
        if (fullYear < 2000
                || fullYear > 2099
                || month < 1
                || month > 12
                || day < 1
                || day > 31
                || hour > 23
                || parts[4] > 59
                || parts[5] > 59) {
            return Optional.empty();
        }
        if (day > java.time.YearMonth.of(fullYear, month).lengthOfMonth()) {
            return Optional.empty();
        }
        return Optional.of(new Written(
                LocalDateTime.of(fullYear, month, day, hour, parts[4], parts[5], parts[6] * 1_000_000),
                offsetSeconds == NO_OFFSET ? Optional.empty() : Optional.of(ZoneOffset.ofTotalSeconds(offsetSeconds))));
    }

    private static int millis(String text, int from, int to) {
        int millis = 0;
        for (int i = 0; i < 3; i++) {
            millis = millis * 10 + (from + i < to ? text.charAt(from + i) - '0' : 0);
        }
        return millis;
    }

    /** +01:00, +0100 or +01. */
    private static Optional<Integer> offset(String text, int at) {
        try {
            int seconds = ZoneOffset.of(text.substring(at).strip()).getTotalSeconds();
            return Optional.of(seconds);
        } catch (java.time.DateTimeException none) {
            return Optional.empty();
        }
    }

    private static boolean isHalf(String text, int at) {
        return text.regionMatches(true, at, "am", 0, 2)
                || text.regionMatches(true, at, "pm", 0, 2)
                || text.regionMatches(true, at, "a.m.", 0, 4)
                || text.regionMatches(true, at, "p.m.", 0, 4);
    }
}
