package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.units.Temperature;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * Something went wrong with a machine, the eggs or the birds.
 *
 * @param machine absent where it struck all or none
 * @param until when it was over; absent where it was a moment or is not over
 * @param reached the farthest that the air was seen to go; absent where nobody read it
 */
public record IncidentNoted(
        IncidentKind what,
        @Nullable MachineName machine,
        @Nullable OffsetDateTime until,
        @Nullable Temperature reached,
        String text)
        implements Payload {
    public IncidentNoted {
        text = Checks.text("What happened", text);
        Checks.year("Over at", until);
    }
}
