package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.book.name.TrayName;
import eggwright.units.OutOfRange;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One tray as it was filled for a set.
 *
 * @param machine absent where not recorded
 * @param section absent where not recorded or the machine has none
 * @param position where in the section, in the farm's own words; absent where not recorded
 */
public record LoadSet(
        TrayName tray,
        @Nullable MachineName machine,
        @Nullable SectionName section,
        @Nullable String position,
        List<Lot> lots) {
    public LoadSet {
        lots = List.copyOf(lots);
        if (lots.isEmpty()) {
            throw new OutOfRange(
                    EntryReason.TRAY_WITHOUT_EGGS,
                    "Tray " + tray + " has no eggs. Name at least one lot.",
                    tray.text());
        }
    }

    public int eggs() {
        return lots.stream().mapToInt(Lot::eggs).sum();
    }
}
