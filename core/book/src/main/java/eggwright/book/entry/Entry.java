package eggwright.book.entry;

import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import java.time.OffsetDateTime;

/**
 * What a person saw or did. It happened at an instant, somebody noted it, it never changes.
 *
 * @param id made on the device that noted it
 * @param happened when it happened, with the offset of the place; never edited
 * @param noted when it was noted, by the device's own clock
 * @param payloadVersion version of the payload's written form, at least 1
 */
public record Entry(
        EntryId id,
        FarmId farm,
        OffsetDateTime happened,
        OffsetDateTime noted,
        PersonName who,
        DeviceName device,
        Origin origin,
        Payload payload,
        int payloadVersion) {
    public Entry {
        Checks.atLeast("Payload version", payloadVersion, 1);
        Checks.year("The entry's own time", happened.toLocalDate());
    }

    /** Same id, kind, happened instant and payload: the same entry, whatever its noted or received times. */
    public boolean isSameAs(Entry other) {
        return id.equals(other.id)
                && happened.toInstant().equals(other.happened.toInstant())
                && payload.equals(other.payload);
    }
}
