package eggwright.book.entry;

import eggwright.book.name.EntryId;
import eggwright.units.OutOfRange;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * Mends an earlier entry: what it should have said.
 *
 * @param target the entry as first noted
 * @param saw the version that was on the page when it was mended: the target itself or an earlier mend
 * @param happened the instant it should have had; absent where that was right
 */
public record Replaced(
        EntryId target, EntryId saw, @Nullable OffsetDateTime happened, Payload with) implements Payload {
    public Replaced {
        if (with instanceof Replaced || with instanceof Withdrawn) {
            throw new OutOfRange(EntryReason.MEND_OF_A_MEND, "A mend cannot put a mend in the place of an entry.");
        }
    }
}
