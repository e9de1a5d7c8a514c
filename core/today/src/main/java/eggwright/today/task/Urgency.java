package eggwright.today.task;

import java.time.ZonedDateTime;
import java.util.Locale;

/** How a piece of work stands to the present hour, most urgent first. */
public enum Urgency {
    /** Its day has passed. */
    OVERDUE,
    /** Of today, and its hour has come. */
    NOW,
    /** Of today, later. */
    LATER_TODAY,
    /** Its day has passed, and it can still be done. */
    STILL_POSSIBLE,
    /** Of a day to come. */
    COMING,
    /** Its time is over; such work stands on no sheet. */
    OVER;

    /** For message keys. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Days are those of the farm's calendar: {@code now} and the span are in its zone. */
    public static Urgency of(TaskKind kind, Span when, ZonedDateTime now) {
        var today = now.toLocalDate();
        if (when.lastDay().isBefore(today)) {
            return kind.lateness() == Lateness.OVERDUE ? OVERDUE : OVER;
        }
        if (when.firstDay().isAfter(today)) {
            return COMING;
        }
        if (when.firstDay().isBefore(today) && kind.lateness() == Lateness.STILL_POSSIBLE) {
            return STILL_POSSIBLE;
        }
        return now.isBefore(when.from()) ? LATER_TODAY : NOW;
    }
}
