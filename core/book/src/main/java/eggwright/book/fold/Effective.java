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
 */
public record Effective(Kept kept, EntryId shown, OffsetDateTime at, Payload payload) implements Comparable<Effective> {
    static Effective unmended(Kept kept, FarmClock clock) {
        return new Effective(
                kept,
                kept.entry().id(),
                at(kept, corrected(kept), clock),
                kept.entry().payload());
    }

    static Effective mended(Kept kept, EntryId by, Replaced mend, FarmClock clock) {
        var happened = mend.happened();
        return new Effective(kept, by, at(kept, happened == null ? corrected(kept) : happened, clock), mend.with());
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

    public Instant instant() {
        return at.toInstant();
    }

    /** By corrected happened instant, then by id. */
    @Override
    public int compareTo(Effective other) {
        int order = Long.compare(at.toEpochSecond(), other.at.toEpochSecond());
        if (order == 0) {
            order = Integer.compare(at.getNano(), other.at.getNano());
        }
        return order != 0 ? order : id().compareTo(other.id());
    }
}
