package eggwright.desk.machine;

import eggwright.desk.form.Typed;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * What a chart shows.
 *
 * @param to at most now
 * @param now of the desk
 */
record Window(Span span, Instant from, Instant to, Instant now) {
    static final String SPAN = "span";
    static final String TO = "to";
    /** No logger wrote before; and far back instants have no days before them. */
    private static final Instant FIRST = Instant.parse("1980-01-01T00:00:00Z");
    /** A season that has only begun is not drawn over months of nothing. */
    private static final Duration SHORTEST_SEASON = Duration.ofDays(14);

    /** As it was asked for; the last day where nothing was, or nothing that can be read. */
    static Window of(Typed asked, Instant now) {
        var span = Span.ofWord(asked.text(SPAN)).orElse(Span.DAY);
        var to = instant(asked.text(TO))
                .filter(t -> t.isBefore(now) && t.isAfter(FIRST))
                .orElse(now);
        return new Window(span, to.minus(span.length()), to, now);
    }

    private static Optional<Instant> instant(String text) {
        try {
            return Optional.of(Instant.parse(text));
        } catch (DateTimeException notOne) {
            return Optional.empty();
        }
    }

    /** A season begins when something was first read. */
    Window since(Optional<Instant> first) {
        var latest = to.minus(SHORTEST_SEASON);
        return span != Span.SEASON
                ? this
                : first.filter(f -> f.isAfter(from))
                        .map(f -> new Window(span, f.isBefore(latest) ? f : latest, to, now))
                        .orElse(this);
    }

    boolean holds(Instant at) {
        return !at.isBefore(from) && at.isBefore(to);
    }

    /** Where an instant stands, from 0 at the left to 100 at the right. */
    double pct(Instant at) {
        return 100.0 * from.until(at, ChronoUnit.MILLIS) / from.until(to, ChronoUnit.MILLIS);
    }

    /** The address of the same length of time further back; a quarter of what was seen stays. */
    String earlier() {
        return asked(span, to.minus(step()));
    }

    String later() {
        return asked(span, to.plus(step()));
    }

    private Duration step() {
        return span.length().multipliedBy(3).dividedBy(4);
    }

    /** Another stretch up to the same end. */
    String as(Span other) {
        return asked(other, to);
    }

    private String asked(Span other, Instant end) {
        var question = "?" + SPAN + "=" + other.word();
        return end.isBefore(now) ? question + "&" + TO + "=" + end.truncatedTo(ChronoUnit.MINUTES) : question;
    }
}
