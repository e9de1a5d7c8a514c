package eggwright.testkit.contracts;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Origin;
import eggwright.book.entry.Remarked;
import eggwright.book.name.DeviceName;
import eggwright.book.name.EntryId;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import java.time.OffsetDateTime;

/** Entries to try a store with. */
public final class Notes {
    private static final OffsetDateTime EVENING = OffsetDateTime.parse("2027-04-13T19:00-05:00");
    private static final long MADE_MILLIS = 1_800_000_000_000L;

    private Notes() {}

    /** A remark with an id of that number. */
    public static Entry remark(FarmId farm, int number, String text) {
        return new Entry(
                EntryId.of(MADE_MILLIS, 0, number),
                farm,
                EVENING,
                EVENING.plusMinutes(1),
                new PersonName("Wren"),
                new DeviceName("desk"),
                Origin.NOTED,
                new Remarked(null, text),
                1);
    }

    /** The same entry, noted again at another minute and on another device. */
    public static Entry again(Entry entry) {
        return new Entry(
                entry.id(),
                entry.farm(),
                entry.happened(),
                entry.noted().plusMinutes(7),
                entry.who(),
                new DeviceName("phone"),
                entry.origin(),
                entry.payload(),
                entry.payloadVersion());
    }
}
