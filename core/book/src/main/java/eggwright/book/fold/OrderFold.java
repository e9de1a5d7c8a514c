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
final class OrderFold implements PartFold<OrderPicture> {
    private final OrderNumber order;
    private final List<EntryId> mentions = new ArrayList<>();
    private @Nullable ChicksOrdered ordered;
    private @Nullable String cancelled;
    private int delivered;
    private int dead;

    OrderFold(OrderNumber order) {
        this.order = order;
    }

    @Override
    public void take(Effective entry) {
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

    @Override
    public Folded<OrderPicture> folded() {
        var unknown = ordered != null || mentions.isEmpty()
                ? List.<Discrepancy>of()
                : List.of(new Discrepancy(
                        DiscrepancyKind.UNKNOWN_ORDER,
                        mentions,
                        new Discrepancy.About.Order(order),
                        0,
                        0,
                        Discrepancy.What.Untold.UNTOLD));
        return new Folded<>(new OrderPicture(order, ordered, delivered, dead, cancelled), unknown);
    }
}
