package eggwright.book.entry;

import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Eggs came from elsewhere. They are kept under a name of their own, as if it were a pen.
 *
 * @param laidFrom absent where the seller did not say
 * @param laidTo absent where the seller did not say
 * @param from whose eggs they were
 */
public record EggsReceived(
        PenName keptAs,
        Species species,
        @Nullable LocalDate laidFrom,
        @Nullable LocalDate laidTo,
        int eggs,
        ReceivedFor purpose,
        String from)
        implements Payload {
    public EggsReceived {
        Checks.inOrder("Laid", laidFrom, laidTo);
        Checks.count("Eggs", eggs);
        from = Checks.text("From", from);
    }
}
