package eggwright.book.picture;

import eggwright.book.name.EntryId;
import java.util.Set;

/**
 * Eggs that one look had before it. A look at all of them leaves what was apart apart: one for each group that could be
 * told apart. A look at a part speaks of all together.
 *
 * @param of the parcels they came from
 * @param where the loads in which they may have been
 * @param held eggs there before the look
 * @param seen eggs looked at, at most {@code held}
 */
public record LookedOver(EntryId by, Parcels of, Set<LoadRef> where, int held, int seen) {
    public LookedOver {
        where = Set.copyOf(where);
    }

    public boolean isWhole() {
        return seen == held;
    }
}
