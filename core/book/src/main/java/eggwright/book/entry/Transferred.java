package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.units.OutOfRange;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Eggs went from setter to hatcher.
 *
 * @param hatcher absent where not recorded
 */
public record Transferred(@Nullable MachineName hatcher, List<TransferOf> eggs) implements Payload {
    public Transferred {
        eggs = List.copyOf(eggs);
        if (eggs.isEmpty()) {
            throw new OutOfRange(EntryReason.TRANSFER_WITHOUT_TRAY, "The transfer names no tray. Name at least one.");
        }
    }
}
