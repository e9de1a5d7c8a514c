package eggwright.trade;

import eggwright.trade.source.Evidence;
import eggwright.trade.source.Source;
import eggwright.trade.source.Sources;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which source is followed where several speak of one field.
 *
 * <ol>
 *   <li>A figure for the species itself comes before one for any species.
 *   <li>Settings of one machine come from one source where a source gives them all.
 *   <li>A guide (extension service) whose words were read; a guide read in a copy; a study read; a study read in a
 *       copy; a figure worked out here; a publication recalled; memory.
 *   <li>Among equals, the first in the table.
 * </ol>
 *
 * Guides come before studies because they were made to be followed by others, while a study tells what one flock did.
 */
final class Choice {
    /** Fields that are set on one machine together. */
    private static final List<Set<ProfileField>> TOGETHER = List.of(
            Set.of(ProfileField.SETTER_TEMPERATURE, ProfileField.SETTER_WET_BULB, ProfileField.SETTER_HUMIDITY),
            Set.of(ProfileField.HATCHER_TEMPERATURE, ProfileField.HATCHER_WET_BULB, ProfileField.HATCHER_HUMIDITY));

    private static final int COMPUTED_HERE = 5;
    private static final int RECALLED = 6;
    private static final int FROM_MEMORY = 7;

    private Choice() {}

    /** The row to follow; empty where no row has the field. */
    static Optional<ProfileRow> of(ProfileField field, List<ProfileRow> rows) {
        return rows.stream()
                .filter(row -> row.shown().values().containsKey(field))
                .min(Comparator.comparing(ProfileRow::scope)
                        .thenComparingInt(row -> whole(field, row))
                        .thenComparingInt(Choice::rank));
    }

    private static int whole(ProfileField field, ProfileRow row) {
        for (var fields : TOGETHER) {
            if (fields.contains(field)) {
                return row.shown().values().keySet().containsAll(fields) ? 0 : 1;
            }
        }
        return 0;
    }

    /** Not a switch over the kinds of source: its first use costs a start-up 12 ms, half of all the tables do. */
    private static int rank(ProfileRow row) {
        var source = row.shown().source();
        if (source instanceof Source.Published read) {
            return published(read);
        }
        return source instanceof Source.Computed ? COMPUTED_HERE : FROM_MEMORY;
    }

    private static int published(Source.Published read) {
        if (read.evidence() == Evidence.RECALLED) {
            return RECALLED;
        }
        var guide = Sources.shipped().kindOf(read.key()).orElse(Sources.Kind.STUDY) == Sources.Kind.GUIDE;
        return (guide ? 1 : 3) + (read.evidence() == Evidence.SEEN ? 0 : 1);
    }
}
