package eggwright.book.picture;

import eggwright.book.entry.ChicksOrdered;
import eggwright.book.name.OrderNumber;
import org.jspecify.annotations.Nullable;

/**
 * One promise.
 *
 * @param ordered what was promised; absent where a delivery names an order that the book has not seen
 * @param cancelled why it was called off; absent while it stands
 */
public record OrderPicture(
        OrderNumber order,
        @Nullable ChicksOrdered ordered,
        int delivered,
        int deadOnArrival,
        @Nullable String cancelled) {
    /** Still owed. */
    public int owed() {
        return ordered == null || cancelled != null ? 0 : Math.max(0, ordered.chicks() - delivered);
    }
}
