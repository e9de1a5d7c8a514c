package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A machine came into use.
 *
 * @param trayPlaces how many trays or baskets it holds; absent where not recorded
 */
public record MachineAdded(
        MachineName machine,
        MachineKind does,
        List<SectionName> sections,
        @Nullable Integer trayPlaces,
        String note) implements Payload {
    public MachineAdded {
        sections = List.copyOf(sections);
        if (trayPlaces != null) {
            Checks.count("Tray places", trayPlaces);
        }
        note = Checks.text("Note", note);
    }
}
