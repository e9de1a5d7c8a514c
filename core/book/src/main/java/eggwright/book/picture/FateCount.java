package eggwright.book.picture;

import eggwright.book.name.EntryId;
import org.jspecify.annotations.Nullable;

/**
 * So many eggs, of these parcels together, with this fate.
 *
 * @param of the parcels among which the eggs are; never split below this by guess
 * @param by the entry that counted them; absent for eggs still in
 * @param fromDay first day of incubation on which it can have happened
 * @param toDay day of incubation on which it was seen
 */
public record FateCount(
        Parcels of, Fate fate, int eggs, @Nullable EntryId by, int fromDay, int toDay) {}
