package eggwright.book.entry;

import eggwright.book.name.BuyerNumber;
import eggwright.book.name.SetName;
import eggwright.trade.Species;
import org.jspecify.annotations.Nullable;

/**
 * Chicks were sold without an order.
 *
 * @param set absent where chicks of several sets were put together
 * @param buyer absent where sold to nobody named
 */
public record ChicksSold(
        @Nullable SetName set,
        Species species,
        int chicks,
        @Nullable BuyerNumber buyer) implements Payload {
    public ChicksSold {
        Checks.count("Chicks", chicks);
    }
}
