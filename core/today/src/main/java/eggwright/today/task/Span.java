package eggwright.today.task;

import java.time.LocalDate;
import java.time.ZonedDateTime;

/**
 * When a piece of work belongs: it is of today from the date of {@code from} to the date of {@code to}, by the farm's
 * calendar and never by the hour.
 */
public record Span(ZonedDateTime from, ZonedDateTime to) {
    public Span {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("A span from " + from + " back to " + to);
        }
    }

    public static Span at(ZonedDateTime at) {
        return new Span(at, at);
    }

    public LocalDate firstDay() {
        return from.toLocalDate();
    }

    public LocalDate lastDay() {
        return to.toLocalDate();
    }
}
