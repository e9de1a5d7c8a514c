package eggwright.book.entry;

import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The eggs picked up from one pen on one occasion.
 *
 * @param pen absent where the farm keeps no pens apart
 * @param laidFrom first day on which these eggs may have been laid
 * @param laidTo last day on which these eggs may have been laid
 */
public record EggsGathered(
        @Nullable PenName pen, Species species, LocalDate laidFrom, LocalDate laidTo, int kept, List<Rejected> rejected)
        implements Payload {
    public EggsGathered {
        Checks.inOrder("Laid", laidFrom, laidTo);
        Checks.count("Kept", kept);
        rejected = List.copyOf(rejected);
    }

    public int rejectedCount() {
        return rejected.stream().mapToInt(Rejected::eggs).sum();
    }
}
