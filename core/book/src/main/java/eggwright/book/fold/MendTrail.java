package eggwright.book.fold;

import eggwright.book.name.EntryId;
import java.util.List;

/**
 * The versions of one entry.
 *
 * @param target the entry as first noted
 * @param mends every mend of it, by id
 * @param shown the version that counts
 */
public record MendTrail(EntryId target, List<EntryId> mends, EntryId shown, Standing standing) {
    public MendTrail {
        mends = List.copyOf(mends);
    }

    /** Whether the entry still counts. */
    public enum Standing {
        COUNTS,
        WITHDRAWN
    }
}
