package eggwright.book.entry;

import eggwright.book.name.MachineName;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * Something went wrong with a machine, the eggs or the birds.
 *
 * @param machine absent where it struck all or none
 * @param until when it was over; absent where it was a moment or is not over
 */
public record IncidentNoted(
        IncidentKind what,
        @Nullable MachineName machine,
        @Nullable OffsetDateTime until,
        String text) implements Payload {
    public IncidentNoted {
        text = Checks.text("What happened", text);
    }
}
