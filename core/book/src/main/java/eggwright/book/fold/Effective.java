package eggwright.book.fold;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Payload;
import eggwright.book.entry.Replaced;
import eggwright.book.name.EntryId;
import eggwright.book.picture.FarmClock;
import java.time.Instant;
import java.time.OffsetDateTime;

/**
 * An entry as it counts, mends taken in.
 *
 * @param kept the entry as first noted
 * @param shown the version that counts: the entry itself or its last mend
 * @param at when it happened by the farm's clock, mends taken in; the date of an imported row stands as it was written
 * @param instant the same, for putting in order
 */
public record Effective(Kept kept, EntryId shown, OffsetDateTime at, Instant instant, Payload payload)
        implements Comparable<Effective> {
    private static Effective of(Kept kept, EntryId shown, OffsetDateTime at, Payload payload) {
        return new Effective(kept, shown, at, at.toInstant(), payload);
    }

    static Effective unmended(Kept kept, FarmClock clock) {
        return of(
                kept,
                kept.entry().id(),
                at(kept, corrected(kept), clock),
                kept.entry().payload());
    }

    static Effective mended(Kept kept, EntryId by, Replaced mend, FarmClock clock) {
        var happened = mend.happened();
        return of(kept, by, at(kept, happened == null ? corrected(kept) : happened, clock), mend.with());
    }

    private static OffsetDateTime corrected(Kept kept) {
        var time = kept.entry().happened();
        return kept.clockOffset().isZero() ? time : time.plus(kept.clockOffset());
    }

    private static OffsetDateTime at(Kept kept, OffsetDateTime time, FarmClock clock) {
        return switch (kept.entry().origin()) {
            case NOTED -> clock.at(time);
            case IMPORTED -> time;
        };
    }

    public Entry entry() {
        return kept.entry();
    }

    public EntryId id() {
        return kept.entry().id();
    }

    /** By corrected happened instant, then by id. */
    @Override
    public int compareTo(Effective other) {
        int order = instant.compareTo(other.instant);
        return order != 0 ? order : id().compareTo(other.id());
    }
}
