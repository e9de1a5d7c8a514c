package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import org.jspecify.annotations.Nullable;

/**
 * A whole tray walked to another section or machine.
 *
 * @param section absent where the machine has none
 * @param position where in the section; absent where not recorded
 */
public record LoadPlaced(
        SetName set,
        TrayName tray,
        MachineName machine,
        @Nullable SectionName section,
        @Nullable String position) implements Payload {}
