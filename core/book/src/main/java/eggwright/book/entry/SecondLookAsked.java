package eggwright.book.entry;

import eggwright.book.name.PersonName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.units.OutOfRange;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Some trays of a set are to be candled once more, blind, by another person than the first.
 *
 * @param of who is asked; absent where anybody else will do
 */
public record SecondLookAsked(
        SetName set, List<TrayName> trays, @Nullable PersonName of) implements Payload {
    public SecondLookAsked {
        trays = List.copyOf(trays);
        if (trays.isEmpty()) {
            throw new OutOfRange(
                    EntryReason.SECOND_LOOK_WITHOUT_TRAY,
                    "No tray of set " + set + " was named for the second look. Name at least one.",
                    set.text());
        }
    }
}
