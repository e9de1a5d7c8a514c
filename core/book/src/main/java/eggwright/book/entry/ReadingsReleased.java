package eggwright.book.entry;

import eggwright.units.OutOfRange;
import java.time.OffsetDateTime;

/**
 * Readings that were held back between two moments, both included, were true after all.
 *
 * @param why how that is known
 */
public record ReadingsReleased(SensorAt sensor, OffsetDateTime from, OffsetDateTime to, String why) implements Payload {
    public ReadingsReleased {
        why = Checks.text("Why", why);
        Checks.year("Let in from", from);
        Checks.year("Let in until", to);
        if (to.toInstant().isBefore(from.toInstant())) {
            throw new OutOfRange(
                    EntryReason.MOMENTS_BACKWARDS,
                    "Readings are let in from " + from + " back to " + to + "; the earlier moment comes first.",
                    from.toLocalDateTime().toString(),
                    to.toLocalDateTime().toString());
        }
    }
}
