package eggwright.testkit.contracts;

import eggwright.book.store.BuyerStore;
import java.util.function.Consumer;

class MemoryBuyerStoreTest extends BuyerStoreContract {
    private final BuyerStore people = new MemoryBuyerStore();

    @Override
    protected void with(Consumer<BuyerStore> work) {
        work.accept(people);
    }
}
