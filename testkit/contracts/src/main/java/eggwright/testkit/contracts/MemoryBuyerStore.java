package eggwright.testkit.contracts;

import eggwright.book.name.BuyerNumber;
import eggwright.book.store.Buyer;
import eggwright.book.store.BuyerStore;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Buyers that live as long as the program. */
public final class MemoryBuyerStore implements BuyerStore {
    private final TreeMap<BuyerNumber, Buyer> buyers = new TreeMap<>();

    @Override
    public synchronized List<Buyer> all() {
        return List.copyOf(buyers.values());
    }

    @Override
    public synchronized Optional<Buyer> find(BuyerNumber number) {
        return Optional.ofNullable(buyers.get(number));
    }

    @Override
    public synchronized Change keep(Buyer buyer) {
        buyers.put(buyer.number(), buyer);
        return new Change.Done();
    }

    @Override
    public synchronized Change erase(BuyerNumber number) {
        return buyers.remove(number) == null ? new Change.WasNotThere() : new Change.Done();
    }
}
