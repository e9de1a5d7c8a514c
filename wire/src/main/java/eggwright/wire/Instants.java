package eggwright.wire;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/**
 * Reads instants as ISO 8601 writes them. The usual layouts are read digit by digit, which takes a tenth of the time of
 * the library's reader at a start; whatever looks otherwise is left to that reader, so that both read the same.
 */
public final class Instants {
    private static final int MINUTES = 16;
    private static final int SECONDS = 19;
    private static final int OFFSET = 6;

    private Instants() {}

    /**
     * An instant with its offset, such as 2027-04-05T08:00-05:00.
     *
     * @throws java.time.DateTimeException if it is not one
     */
    public static OffsetDateTime withOffset(String text) {
        int length = text.length();
        if ((length == MINUTES + OFFSET || length == SECONDS + OFFSET) && isLocal(text, length - OFFSET)) {
            int at = length - OFFSET;
            char sign = text.charAt(at);
            int hours = two(text, at + 1);
            int minutes = two(text, at + 4);
            if ((sign == '+' || sign == '-') && text.charAt(at + 3) == ':' && hours >= 0 && minutes >= 0) {
                return OffsetDateTime.of(
                        local(text, at),
                        sign == '-'
                                ? ZoneOffset.ofHoursMinutes(-hours, -minutes)
                                : ZoneOffset.ofHoursMinutes(hours, minutes));
            }
        }
        return OffsetDateTime.parse(text);
    }

    /**
     * An instant in UTC, such as 2027-04-05T13:00:00Z.
     *
     * @throws java.time.DateTimeException if it is not one
     */
    public static Instant utc(String text) {
        return text.length() == SECONDS + 1 && text.charAt(SECONDS) == 'Z' && isLocal(text, SECONDS)
                ? local(text, SECONDS).toInstant(ZoneOffset.UTC)
                : Instant.parse(text);
    }

    /** Whether it begins as 2027-04-05T08:00 or, where it is longer, as 2027-04-05T08:00:20. */
    private static boolean isLocal(String text, int length) {
        return two(text, 0) >= 0
                && two(text, 2) >= 0
                && text.charAt(4) == '-'
                && two(text, 5) >= 0
                && text.charAt(7) == '-'
                && two(text, 8) >= 0
                && text.charAt(10) == 'T'
                && two(text, 11) >= 0
                && two(text, 11) < 24
                && text.charAt(13) == ':'
                && two(text, 14) >= 0
                && (length == MINUTES || isSecond(text));
    }

    /** A leap second, 60, is left to the library. */
    private static boolean isSecond(String text) {
        int second = two(text, MINUTES + 1);
        return text.charAt(MINUTES) == ':' && second >= 0 && second < 60;
    }

    private static LocalDateTime local(String text, int length) {
        return LocalDateTime.of(
                LocalDate.of(two(text, 0) * 100 + two(text, 2), two(text, 5), two(text, 8)),
                LocalTime.of(two(text, 11), two(text, 14), length == MINUTES ? 0 : two(text, MINUTES + 1)));
    }

    /** Two digits as a number; below 0 where they are not digits. */
    private static int two(String text, int at) {
        int tens = text.charAt(at) - '0';
        int ones = text.charAt(at + 1) - '0';
        return tens < 0 || tens > 9 || ones < 0 || ones > 9 ? -1 : tens * 10 + ones;
    }
}
