package eggwright.book.picture;

import eggwright.book.entry.Payload;
import eggwright.book.name.EntryId;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * What is true of the farm as a whole.
 *
 * @param overrides the farm's own figures: for each species, by profile field, the value as typed and since when
 * @param notes incidents and remarks, in time order
 * @param chicks by species, what became of chicks after take-off
 */
public record FarmPicture(
        Habits habits,
        Map<Species, SortedMap<String, Overridden>> overrides,
        List<Note> notes,
        Map<Species, Chicks> chicks) {
    public FarmPicture {
        overrides = Map.copyOf(overrides);
        notes = List.copyOf(notes);
        chicks = Map.copyOf(chicks);
    }

    /** A figure that this farm set for itself. */
    public record Overridden(String value, LocalDate since) {}

    /** An incident or a remark. */
    public record Note(EntryId entry, OffsetDateTime at, Payload what) {}

    /** Chicks after take-off. */
    public record Chicks(int placed, int died, int sold, int delivered) {
        public static final Chicks NONE = new Chicks(0, 0, 0, 0);

        public Chicks plus(Chicks more) {
            return new Chicks(placed + more.placed, died + more.died, sold + more.sold, delivered + more.delivered);
        }
    }
}
