package eggwright.intake.message;

import eggwright.intake.message.Complaint.Kind;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.Locale;

/**
 * Reads when something was read: ISO 8601 with an offset, as {@code 2027-04-05T06:00:00-05:00}.
 *
 * @param now of the desk's clock
 */
record Moments(Instant now) {
    /** A clock may be a little ahead; the same as for loggers' files. */
    static final Duration AHEAD = Duration.ofMinutes(10);

    /** A clock that was never set begins in 1970 or 2000: no reading of a farm is from before. */
    private static final Instant FIRST = Instant.parse("2001-01-01T00:00:00Z");

    /** The offset with or without its colon: both are in the standard. */
    private static final DateTimeFormatter FORM = new DateTimeFormatterBuilder()
            .parseCaseInsensitive()
            .append(DateTimeFormatter.ISO_LOCAL_DATE_TIME)
            .appendPattern("[XXX][XX][X]")
            .toFormatter(Locale.ROOT)
            // A day that no calendar has, as 30 February, is a mistake, not the last day of that month.
            .withResolverStyle(ResolverStyle.STRICT);

    sealed interface Read {
        record At(Instant instant) implements Read {}

        record Wrong(Kind kind) implements Read {}
    }

    Read read(String text) {
        try {
            var at = OffsetDateTime.parse(text, FORM).toInstant();
            if (at.isAfter(now.plus(AHEAD))) {
                return new Read.Wrong(Kind.STILL_TO_COME);
            }
            return at.isBefore(FIRST) ? new Read.Wrong(Kind.CLOCK_NEVER_SET) : new Read.At(at);
        } catch (DateTimeException notWithOffset) {
            return new Read.Wrong(isLocal(text) ? Kind.NO_OFFSET : Kind.NOT_A_TIME);
        }
    }

    private static boolean isLocal(String text) {
        try {
            LocalDateTime.parse(text);
            return true;
        } catch (DateTimeException notATime) {
            return false;
        }
    }
}
