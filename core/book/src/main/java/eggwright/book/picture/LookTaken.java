package eggwright.book.picture;

import eggwright.book.entry.Looked;
import eggwright.book.name.EntryId;
import java.time.OffsetDateTime;

/**
 * A look as it was counted.
 *
 * @param day of incubation
 * @param inTheLoad eggs that the book held in its scope before the look
 */
public record LookTaken(EntryId entry, OffsetDateTime at, int day, int inTheLoad, Looked look) {
    /** Eggs that were looked at, the whole where nothing else was noted. */
    public int lookedAt() {
        var noted = look.lookedAt();
        return noted == null ? inTheLoad : Math.min(noted, inTheLoad);
    }
}
