package eggwright.book.entry;

import eggwright.book.name.PenName;
import eggwright.trade.Species;
import org.jspecify.annotations.Nullable;

/**
 * The eggs of one pen in the egg room were counted by hand.
 *
 * @param pen absent where pens are not kept apart
 */
public record EggsCounted(@Nullable PenName pen, Species species, int eggs) implements Payload {
    public EggsCounted {
        Checks.count("Eggs", eggs);
    }
}
