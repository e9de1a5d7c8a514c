package eggwright.book.entry;

import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Eggs left the egg room for the kitchen.
 *
 * @param pen absent where pens are not kept apart
 * @param laidFrom absent: the oldest eggs are taken
 * @param laidTo absent: the oldest eggs are taken
 */
public record EggsEaten(
        @Nullable PenName pen,
        Species species,
        @Nullable LocalDate laidFrom,
        @Nullable LocalDate laidTo,
        int eggs) implements Payload {
    public EggsEaten {
        Checks.inOrder("Laid", laidFrom, laidTo);
        Checks.count("Eggs", eggs);
    }
}
