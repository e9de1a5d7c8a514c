package eggwright.book.entry;

import eggwright.book.name.SetName;
import eggwright.trade.Species;
import org.jspecify.annotations.Nullable;

/**
 * Chicks died in a brooder.
 *
 * @param set absent where chicks of several sets were together
 */
public record ChicksDied(@Nullable SetName set, Species species, int chicks, String brooder, String why)
        implements Payload {
    public ChicksDied {
        Checks.count("Chicks", chicks);
        brooder = Checks.text("Brooder", brooder);
        why = Checks.text("Why", why);
    }
}
