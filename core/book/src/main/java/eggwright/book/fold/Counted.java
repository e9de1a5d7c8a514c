package eggwright.book.fold;

import eggwright.book.picture.Parcels;
import java.util.List;

/** Eggs that one number speaks of together: still in, or gone with one fate. */
sealed interface Counted permits Pool, Departure {
    /** The spots among which they are or were. */
    List<Spot> spots();

    /** The parcels among which they are: those of the spots, or fewer where the count named a pen. */
    Parcels of();

    int eggs();
}
