package eggwright.book.fold;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksOrdered;
import eggwright.book.entry.OrderCancelled;
import eggwright.book.name.EntryId;
import eggwright.book.name.OrderNumber;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.OrderPicture;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Folds one promise. */
final class OrderFold {
    private OrderFold() {}

    static Folded<OrderPicture> fold(OrderNumber order, Iterable<Effective> entries) {
        ChicksOrdered ordered = null;
        String cancelled = null;
        int delivered = 0;
        int dead = 0;
        var mentions = new ArrayList<EntryId>();
        for (var entry : entries) {
            switch (entry.payload()) {
                case ChicksOrdered it -> ordered = it;
                case OrderCancelled it -> {
                    cancelled = it.why();
                    mentions.add(entry.id());
                }
                case ChicksDelivered it -> {
                    delivered += it.chicks();
                    dead += it.deadOnArrival();
                    mentions.add(entry.id());
                }
                default -> {
                    // No other kind names an order.
                }
            }
        }
        return new Folded<>(
                new OrderPicture(order, ordered, delivered, dead, cancelled), unknown(order, ordered, mentions));
    }

    private static List<Discrepancy> unknown(
            OrderNumber order, @Nullable ChicksOrdered ordered, List<EntryId> mentions) {
        return ordered != null || mentions.isEmpty()
                ? List.of()
                : List.of(new Discrepancy(DiscrepancyKind.UNKNOWN_ORDER, mentions, "order " + order, 0, 0, ""));
    }
}
