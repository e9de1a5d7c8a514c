package eggwright.book.entry;

import eggwright.book.name.SetName;
import eggwright.trade.Species;
import org.jspecify.annotations.Nullable;

/**
 * Chicks went into a brooder.
 *
 * @param set absent where chicks of several sets were put together
 */
public record ChicksPlaced(@Nullable SetName set, Species species, int chicks, String brooder) implements Payload {
    public ChicksPlaced {
        Checks.count("Chicks", chicks);
        brooder = Checks.text("Brooder", brooder);
    }
}
