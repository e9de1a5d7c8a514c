package eggwright.book.entry;

import eggwright.units.Amount;
import eggwright.units.OutOfRange;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/** Range checks that payloads share. A message names the field, the value and what would be right. */
final class Checks {
    /** More than any small farm sets in a season; larger numbers are slips of the finger. */
    static final int MOST_EGGS = 1_000_000;

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2099;
    private static final int LONGEST_TEXT = 2000;

    private Checks() {}

    static void atLeast(String what, int value, int least) {
        if (value < least) {
            throw new OutOfRange(
                    EntryReason.TOO_FEW, what + " is " + value + "; it is at least " + least + ".", value, least);
        }
    }

    static void count(String what, int value) {
        if (!(value >= 0 && value <= MOST_EGGS)) {
            throw new OutOfRange(
                    EntryReason.NOT_A_COUNT,
                    what + " is " + value + "; it is a whole number from 0 to " + MOST_EGGS + ".",
                    value,
                    MOST_EGGS);
        }
    }

    /** Refuses a number that is not inside the closed range. */
    static void within(EntryReason why, String what, int value, int least, int most) {
        if (!(value >= least && value <= most)) {
            throw new OutOfRange(
                    why, what + " is " + value + "; it is from " + least + " to " + most + ".", value, least, most);
        }
    }

    static void year(String what, @Nullable LocalDate date) {
        if (date != null && (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR)) {
            throw new OutOfRange(
                    EntryReason.YEAR_OUTSIDE,
                    what + " is " + date + "; years run from " + FIRST_YEAR + " to " + LAST_YEAR + ".",
                    date,
                    FIRST_YEAR,
                    LAST_YEAR);
        }
    }

    /** Refuses a moment that no book holds. */
    static void year(String what, @Nullable OffsetDateTime at) {
        year(what, at == null ? null : at.toLocalDate());
    }

    static void inOrder(String what, @Nullable LocalDate from, @Nullable LocalDate to) {
        year(what, from);
        year(what, to);
        if (from != null && to != null && to.isBefore(from)) {
            throw new OutOfRange(
                    EntryReason.DAYS_BACKWARDS,
                    what + " runs from " + from + " back to " + to + "; the first day comes first.",
                    from,
                    to);
        }
    }

    /** Refuses an amount in a unit that the sensor does not measure in. */
    static void unit(SensorAt sensor, @Nullable Amount amount) {
        if (amount != null && !sensor.quantity().isMeasuredIn(amount.unit())) {
            throw new OutOfRange(
                    EntryReason.AMOUNT_OF_OTHER_QUANTITY,
                    amount + " is not a unit in which " + sensor.quantity().word() + " is measured.",
                    amount.toString());
        }
    }

    static String text(String what, String text) {
        if (text.length() > LONGEST_TEXT) {
            throw new OutOfRange(
                    EntryReason.TEXT_TOO_LONG,
                    what + " has " + text.length() + " characters; the most is " + LONGEST_TEXT + ".",
                    text.length(),
                    LONGEST_TEXT);
        }
        return text.strip();
    }
}
