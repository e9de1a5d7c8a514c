package eggwright.book.picture;

import eggwright.book.entry.Lot;
import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The eggs of one lot as they were set: the smallest group that is followed.
 *
 * @param setOn the local date of day 0
 * @param machine where the load was set; absent where not recorded
 * @param section where the load was set; absent where not recorded
 */
public record Parcel(
        ParcelId id,
        Lot lot,
        LocalDate setOn,
        @Nullable MachineName machine,
        @Nullable SectionName section) {
    public int eggs() {
        return lot.eggs();
    }
}
