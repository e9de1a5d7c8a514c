package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.name.BasketName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.DiscrepancyKind;
import java.util.ArrayList;
import java.util.List;

/** Counts of a basket into which, as far as the book knows, nothing was transferred: kept, and shown. */
final class UnknownBasketFold implements PartFold<BasketName> {
    private final BasketName basket;
    private final List<Discrepancy> discrepancies = new ArrayList<>();

    UnknownBasketFold(BasketName basket) {
        this.basket = basket;
    }

    @Override
    public void take(Effective entry) {
        discrepancies.add(new Discrepancy(
                DiscrepancyKind.UNKNOWN_LOAD,
                List.of(entry.id()),
                new Discrepancy.About.Eggs(Scope.ofBasket(basket)),
                0,
                0,
                Discrepancy.What.Untold.UNTOLD));
    }

    @Override
    public Folded<BasketName> folded() {
        return new Folded<>(basket, discrepancies);
    }
}
