package eggwright.book.entry;

import eggwright.book.name.BuyerNumber;
import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Eggs left the egg room for a buyer.
 *
 * @param pen absent where pens are not kept apart
 * @param laidFrom absent: the oldest eggs are taken
 * @param laidTo absent: the oldest eggs are taken
 * @param buyer absent where sold at the gate to nobody named
 */
public record EggsSold(
        @Nullable PenName pen,
        Species species,
        @Nullable LocalDate laidFrom,
        @Nullable LocalDate laidTo,
        @Nullable BuyerNumber buyer,
        int eggs)
        implements Payload {
    public EggsSold {
        Checks.inOrder("Laid", laidFrom, laidTo);
        Checks.count("Eggs", eggs);
    }
}
