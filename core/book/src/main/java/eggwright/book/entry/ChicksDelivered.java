package eggwright.book.entry;

import eggwright.book.name.BuyerNumber;
import eggwright.book.name.OrderNumber;
import eggwright.trade.Species;
import org.jspecify.annotations.Nullable;

/**
 * Chicks went to a buyer.
 *
 * @param order absent where none was noted before
 */
public record ChicksDelivered(
        @Nullable OrderNumber order, BuyerNumber buyer, Species species, int chicks, int deadOnArrival)
        implements Payload {
    public ChicksDelivered {
        Checks.count("Chicks", chicks);
        Checks.count("Dead on arrival", deadOnArrival);
    }
}
