package eggwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.BuyerNumber;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PeopleStoreTest {
    private static final BuyerNumber NUMBER = new BuyerNumber("b-4821");
    private static final Buyer BUYER = new Buyer(NUMBER, "Ada Marsh", "Mill Lane 3", "rings first");

    @TempDir
    private Path folder;

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
    void buyer_isKept_andChanged() {
        try (var store = DataFolder.at(folder).write()) {
            var people = store.people();
            assertEquals(Optional.empty(), people.find(NUMBER));
            people.keep(BUYER);
            people.keep(new Buyer(new BuyerNumber("b-77"), "Tom Reed", "", ""));
            people.keep(new Buyer(NUMBER, "Ada Marsh", "Mill Lane 5", ""));
            assertEquals("Mill Lane 5", people.find(NUMBER).orElseThrow().address());
            assertEquals(
                    List.of("b-77", "b-4821"),
                    people.all().stream().map(b -> b.number().text()).toList());
        }
    }

    @Test
    void erasedBuyer_isInNoFileOfTheFolder() throws Exception {
        try (var store = DataFolder.at(folder).write()) {
            store.people().keep(BUYER);
            assertTrue(anyFileHolds("Ada Marsh"));
            assertEquals(PeopleStore.Erased.ERASED, store.people().erase(NUMBER));
            assertEquals(PeopleStore.Erased.WAS_NOT_THERE, store.people().erase(NUMBER));
            assertEquals(Optional.empty(), store.people().find(NUMBER));
            assertFalse(anyFileHolds("Ada Marsh"));
            assertFalse(anyFileHolds("Mill Lane"));
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
