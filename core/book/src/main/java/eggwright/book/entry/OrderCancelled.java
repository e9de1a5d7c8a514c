package eggwright.book.entry;

import eggwright.book.name.OrderNumber;

/** A promise was called off. */
public record OrderCancelled(OrderNumber order, String why) implements Payload {
    public OrderCancelled {
        why = Checks.text("Why", why);
    }
}
