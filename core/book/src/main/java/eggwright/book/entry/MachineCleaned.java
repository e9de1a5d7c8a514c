package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import org.jspecify.annotations.Nullable;

/**
 * A machine, or one section of it, was cleaned.
 *
 * @param section absent where the whole machine was cleaned
 */
public record MachineCleaned(MachineName machine, @Nullable SectionName section, String how) implements Payload {
    public MachineCleaned {
        how = Checks.text("How", how);
    }
}
