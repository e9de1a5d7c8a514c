package eggwright.book.picture;

import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.name.EntryId;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;

/**
 * What people said of one sensor.
 *
 * @param compared by the moment from which each holds; of two from the same moment, by when they happened, then by entry id
 * @param trusted likewise
 * @param released by when they happened, then by entry id
 */
public record SensorPicture(SensorAt sensor, List<Compared> compared, List<Trusted> trusted, List<Released> released) {
    public SensorPicture {
        compared = compared.stream()
                .sorted(Comparator.comparing(c -> c.from().toInstant()))
                .toList();
        trusted = trusted.stream()
                .sorted(Comparator.comparing(t -> t.from().toInstant()))
                .toList();
        released = List.copyOf(released);
    }

    /** It was held against a reference; holds from a moment on until the next. */
    public record Compared(EntryId entry, OffsetDateTime from, SensorCompared what) {}

    /** It was set aside or taken back; holds likewise. */
    public record Trusted(EntryId entry, OffsetDateTime from, SensorTrustChanged what) {}

    /** Held readings were let in. */
    public record Released(EntryId entry, ReadingsReleased what) {}
}
