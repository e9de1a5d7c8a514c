package eggwright.desk.machine;

import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How much of the past a chart shows, and into what stretches it is cut: some three hundred of them. */
enum Span {
    DAY(Duration.ofDays(1), Duration.ofMinutes(5)),
    WEEK(Duration.ofDays(7), Duration.ofMinutes(30)),
    MONTH(Duration.ofDays(30), Duration.ofHours(2)),
    /** From the first gatherings to the last hatch of most game birds (common practice, no source). */
    SEASON(Duration.ofDays(120), Duration.ofHours(8));

    private final Duration length;
    private final Duration stretch;

    Span(Duration length, Duration stretch) {
        this.length = length;
        this.stretch = stretch;
    }

    Duration length() {
        return length;
    }

    Duration stretch() {
        return stretch;
    }

    /** The word of addresses and texts. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Span> ofWord(String word) {
        return Arrays.stream(values()).filter(s -> s.word().equals(word)).findFirst();
    }
}
