package eggwright.testkit.contracts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.name.BuyerNumber;
import eggwright.book.store.Buyer;
import eggwright.book.store.BuyerStore;
import eggwright.book.store.BuyerStore.Change;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What every store of buyers promises. */
public abstract class BuyerStoreContract {
    private static final BuyerNumber NUMBER = new BuyerNumber("b-4821");

    /** Opens the same store again at each call. */
    protected abstract void with(Consumer<BuyerStore> work);

    @Test
    void buyer_isKept_andChanged() {
        with(people -> {
            assertEquals(Optional.empty(), people.find(NUMBER));
            assertEquals(new Change.Done(), people.keep(new Buyer(NUMBER, "Ada Marsh", "Mill Lane 3", "rings first")));
            people.keep(new Buyer(new BuyerNumber("b-77"), "Tom Reed", "", ""));
            assertEquals(new Change.Done(), people.keep(new Buyer(NUMBER, "Ada Marsh", "Mill Lane 5", "")));
        });
        with(people -> {
            assertEquals(
                    List.of(
                            new Buyer(new BuyerNumber("b-77"), "Tom Reed", "", ""),
                            new Buyer(NUMBER, "Ada Marsh", "Mill Lane 5", "")),
                    people.all());
            assertEquals("Mill Lane 5", people.find(NUMBER).orElseThrow().address());
        });
    }

    @Test
    void erasedBuyer_isGone_andCanBeErasedNoMore() {
        with(people -> people.keep(new Buyer(NUMBER, "Ada Marsh", "Mill Lane 3", "")));
        with(people -> {
            assertEquals(new Change.Done(), people.erase(NUMBER));
            assertEquals(new Change.WasNotThere(), people.erase(NUMBER));
            assertEquals(Optional.empty(), people.find(NUMBER));
            assertEquals(List.of(), people.all());
        });
    }
}
