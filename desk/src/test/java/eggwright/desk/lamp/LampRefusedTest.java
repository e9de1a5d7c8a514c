package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import eggwright.book.entry.Finding;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Ledger;
import eggwright.desk.browser.BrowserStation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the desk refuses stays on the phone, with the reason and a way to mend it. */
final class LampRefusedTest {
    @Test
    void refusedTray_staysOnThePhone_isTakenUpAgain_andThenTaken() {
        refused((farm, phone, context) -> {
            var page = phone.page();
            assertTrue(page.locator(".refused").textContent().contains("The desk did not take tray"));
            assertTrue(page.locator(".desk")
                    .textContent()
                    .contains("1 note that the desk did not take is only on this phone"));
            phone.kill();
            page = phone.open("Wren");
            page.waitForSelector(".refused");
            context.unroute("**/api/lamp/entries");
            phone.touch(".refused [data-key^=again]");
            phone.key("undo");
            phone.key("dead");
            phone.key("done");
            phone.waitUntilSent();
            var look = looks(farm).getFirst();
            assertEquals(1, look.seen(Finding.DEAD));
            assertEquals(0, look.seen(Finding.CLEAR));
            assertEquals(0, page.locator(".refused").count());
        });
    }

    @Test
    void refusedTray_canBeForgotten_onlyOnceItLiesInAFile() {
        refused((farm, phone, context) -> {
            var page = phone.page();
            assertEquals(0, page.locator(".refused [data-key^=letGo]").count());
            var file = page.waitForDownload(() -> phone.touch(".refused [data-key=save]"));
            try {
                var lines = Files.readAllLines(file.path());
                assertEquals(1, lines.size());
                assertTrue(lines.getFirst().contains("\"finding\":\"clear\",\"seen\":1"), lines.getFirst());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            page.waitForSelector(".refused [data-key^=letGo]");
            phone.touch(".refused [data-key^=letGo]");
            page.waitForFunction("() => document.querySelector('.refused') === null");
            phone.waitUntilSent();
            assertEquals(List.of(), looks(farm));
        });
    }

    private static void refused(Held held) {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                context.route(
                        "**/api/lamp/entries",
                        route -> route.fulfill(new Route.FulfillOptions()
                                .setContentType("application/json")
                                .setBody("{\"answers\":[{\"became\":\"refused\",\"reason\":\"Not this way.\"}]}")));
                var phone = new Phone(context, farm.address());
                Page page = phone.open("Wren");
                phone.touch(".next [data-key^=take]");
                phone.key("clear");
                phone.key("done");
                page.waitForSelector(".refused");
                held.hold(farm, phone, context);
            });
        }
    }

    private static List<Looked> looks(LampFarm farm) {
        return Ledger.of(farm.kept()).inOrder().stream()
                .filter(farm::isOfNow)
                .flatMap(e -> e.payload() instanceof Looked look ? Stream.of(look) : Stream.empty())
                .toList();
    }

    /** A farm, a phone with a refused tray, and what the phone keeps. */
    private interface Held {
        void hold(LampFarm farm, Phone phone, BrowserContext context);
    }
}
