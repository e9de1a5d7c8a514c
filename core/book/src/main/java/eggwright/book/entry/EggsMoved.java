package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.units.OutOfRange;
import org.jspecify.annotations.Nullable;

/**
 * Eggs went from one load to another: topped up, pooled.
 *
 * @param pen only eggs of this pen, where they can be told apart; absent: any
 * @param eggs absent: all that were there
 * @param machine where the receiving tray stands, where it is a fresh one
 * @param section where the receiving tray stands, where it is a fresh one
 */
public record EggsMoved(
        SetName fromSet,
        TrayName fromTray,
        @Nullable PenName pen,
        @Nullable Integer eggs,
        SetName toSet,
        TrayName toTray,
        @Nullable MachineName machine,
        @Nullable SectionName section)
        implements Payload {
    public EggsMoved {
        if (eggs != null) {
            Checks.count("Eggs moved", eggs);
        }
        if (fromSet.equals(toSet) && fromTray.equals(toTray)) {
            throw new OutOfRange(
                    EntryReason.MOVED_INTO_ITSELF,
                    "Tray " + fromTray + " of set " + fromSet + " cannot be moved into itself.",
                    fromTray.text(),
                    fromSet.text());
        }
    }
}
