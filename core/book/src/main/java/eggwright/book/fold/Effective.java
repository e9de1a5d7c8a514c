package eggwright.book.fold;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Payload;
import eggwright.book.name.EntryId;
import java.time.Instant;
import java.time.OffsetDateTime;

/**
 * An entry as it counts, mends taken in.
 *
 * @param kept the entry as first noted
 * @param shown the version that counts: the entry itself or its last mend
 * @param at when it happened, clock corrected, mends taken in
 */
public record Effective(Kept kept, EntryId shown, OffsetDateTime at, Payload payload) implements Comparable<Effective> {
    static Effective unmended(Kept kept) {
        return new Effective(
                kept,
                kept.entry().id(),
                corrected(kept, kept.entry().happened()),
                kept.entry().payload());
    }

    static OffsetDateTime corrected(Kept kept, OffsetDateTime time) {
        return kept.clockOffset().isZero() ? time : time.plus(kept.clockOffset());
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
        int order = instant().compareTo(other.instant());
        return order != 0 ? order : id().compareTo(other.id());
    }
}
