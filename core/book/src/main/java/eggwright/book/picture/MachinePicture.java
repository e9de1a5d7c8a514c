package eggwright.book.picture;

import eggwright.book.entry.ClimateNoted;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.MachineUse;
import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One machine.
 *
 * @param does absent where only named by a load
 * @param sections in the farm's own order
 * @param trayPlaces absent where not recorded
 * @param cleanedAt last cleaning of the whole machine; absent where never noted
 * @param climate what was read by hand, in time order
 */
public record MachinePicture(
        MachineName machine,
        @Nullable MachineKind does,
        List<SectionName> sections,
        @Nullable Integer trayPlaces,
        MachineUse use,
        @Nullable OffsetDateTime cleanedAt,
        List<Read> climate) {
    public MachinePicture {
        sections = List.copyOf(sections);
        climate = List.copyOf(climate);
    }

    /** One reading by hand. */
    public record Read(OffsetDateTime at, ClimateNoted what) {}
}
