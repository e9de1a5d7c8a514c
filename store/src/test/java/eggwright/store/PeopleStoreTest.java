package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.BuyerNumber;
import eggwright.book.store.Buyer;
import eggwright.book.store.BuyerStore;
import eggwright.testkit.contracts.BuyerStoreContract;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PeopleStoreTest extends BuyerStoreContract {
    private static final BuyerNumber NUMBER = new BuyerNumber("b-4821");
    private static final Buyer BUYER = new Buyer(NUMBER, "Ada Marsh", "Mill Lane 3", "rings first");

    @TempDir
    private Path folder;

    @Override
    protected void with(Consumer<BuyerStore> work) {
        try (var store = DataFolder.at(folder).write()) {
            work.accept(store.people());
        }
    }

    private boolean anyFileHolds(String text) throws IOException {
        try (var files = Files.list(folder)) {
            for (var file : files.toList()) {
                if (new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(text)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void erasedBuyer_isInNoFileOfTheFolder() throws Exception {
        try (var store = DataFolder.at(folder).write()) {
            store.people().keep(BUYER);
            assertTrue(anyFileHolds("Ada Marsh"));
            assertEquals(new BuyerStore.Change.Done(), store.people().erase(NUMBER));
            assertFalse(anyFileHolds("Ada Marsh"));
            assertFalse(anyFileHolds("Mill Lane"));
        }
    }

    /** A book that only reads cannot keep anybody, and says so. */
    @Test
    void buyer_isNotSaved_whereTheBookIsOnlyRead() {
        DataFolder.at(folder).write().close();
        try (var store = DataFolder.at(folder).read()) {
            assertInstanceOf(BuyerStore.Change.NotSaved.class, store.people().keep(BUYER));
        }
    }

    @Test
    void settings_areKept_andReplaced() {
        try (var store = DataFolder.at(folder).write()) {
            assertEquals(Optional.empty(), store.settings().find("desk_name"));
            store.settings().keep("desk_name", "kitchen");
            store.settings().keep("desk_name", "egg room");
        }
        try (var store = DataFolder.at(folder).read()) {
            assertEquals(Optional.of("egg room"), store.settings().find("desk_name"));
        }
    }
}
