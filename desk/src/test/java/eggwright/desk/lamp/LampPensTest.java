package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Looked;
import eggwright.book.fold.Ledger;
import eggwright.desk.browser.BrowserStation;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Trays in which the eggs of several pens lie, and can be told apart. */
final class LampPensTest {
    @Test
    void pens_areCountedApart_byTheirMarks_theUnmarkedOnesToo() {
        onPhone(LampFarm.open(LampStates.mixed(1, LampStates.marked())), (farm, phone) -> {
            phone.open("Wren");
            LampStates.take(phone, 1);
            pen(phone, "Alder");
            phone.key("clear");
            phone.key("clear");
            pen(phone, "Oak");
            phone.key("dead");
            phone.key("done");
            phone.waitUntilSent();
            assertEquals(List.of("Alder clear 2", "Oak dead 1", "Willow "), looks(farm));
            assertEquals(
                    51,
                    Ledger.of(farm.kept())
                            .picture()
                            .set(LampStates.MIXED)
                            .flatMap(set -> set.load(LampStates.tray(1)))
                            .orElseThrow()
                            .eggsNow());
        });
    }

    /** Never split by guess; and the page says what it makes of the tray, before and after. */
    @Test
    void eggWithoutItsPen_joinsAllIntoOneCount_untilItIsUndone() {
        onPhone(LampFarm.open(LampStates.mixed(1, LampStates.marked())), (farm, phone) -> {
            var page = phone.open("Wren");
            LampStates.take(phone, 1);
            phone.key("clear");
            pen(phone, "Alder");
            phone.key("dead");
            assertTrue(page.locator(".penless").textContent().startsWith("1 egg has no pen."));
            phone.key("done");
            assertTrue(
                    page.locator(".after").textContent().contains("1 egg had no pen, so all pens are counted as one"));
            phone.touch(".after [data-key=undo]");
            phone.key("undo");
            phone.key("undo");
            pen(phone, "Willow");
            phone.key("clear");
            pen(phone, "Alder");
            phone.key("dead");
            assertEquals("", page.locator(".penless").textContent());
            phone.key("done");
            phone.waitUntilSent();
            assertEquals(List.of("Alder dead 1", "Oak ", "Willow clear 1"), looks(farm));
        });
    }

    @Test
    void tray_thatWasCountedAsAWhole_saysThatItsPensAreToo() {
        onPhone(LampFarm.open(LampStates.mixed(1, LampStates.marked())), (farm, phone) -> {
            var page = phone.open("Wren");
            LampStates.take(phone, 1);
            phone.key("fewer");
            pen(phone, "Alder");
            phone.key("clear");
            assertTrue(page.locator(".penless").textContent().startsWith("The tray was counted as a whole."));
            phone.key("done");
            phone.waitUntilSent();
            assertEquals(List.of("null clear 1"), looks(farm));
        });
    }

    @Test
    void place_saysThePenThatLiesThere_andADoubtfulEggIsShownAgain() {
        onPhone(
                LampFarm.open(LampStates.rows(), LampStates.mixed(2, LampStates.placed()), LampStates.doubtful(2)),
                (farm, phone) -> {
                    var page = phone.open("Wren");
                    LampStates.setUp(phone, "places", "on");
                    LampStates.take(phone, 2);
                    assertEquals(
                            List.of("place:7", "place:33"),
                            page.locator(".hole.again").all().stream()
                                    .map(hole -> hole.getAttribute("data-key"))
                                    .toList());
                    phone.touch(".view.tray [data-key='place:33']");
                    phone.key("dead");
                    phone.touch(".view.tray [data-key='place:4']");
                    phone.key("clear");
                    // The place of one egg says nothing of the next.
                    phone.key("rot");
                    assertTrue(page.locator(".penless").textContent().startsWith("1 egg has no pen."));
                    phone.key("undo");
                    phone.key("done");
                    phone.waitUntilSent();
                    assertEquals(List.of("Alder dead 1 at 33", "Willow clear 1 at 4"), looks(farm));
                });
    }

    private static void pen(Phone phone, String pen) {
        phone.touch(".view.tray .pen:has-text('" + pen + "')");
    }

    private static List<String> looks(LampFarm farm) {
        return Ledger.of(farm.kept()).inOrder().stream()
                .filter(farm::isOfNow)
                .flatMap(e -> e.payload() instanceof Looked look ? Stream.of(look) : Stream.empty())
                .map(LampPensTest::words)
                .sorted()
                .toList();
    }

    private static String words(Looked look) {
        var counts = look.findings().stream()
                .map(f -> f.finding().word() + " " + f.seen())
                .toList();
        var places = look.places().stream().map(p -> " at " + p.place()).toList();
        return look.scope().pen() + " " + String.join(" ", counts) + String.join("", places);
    }

    private static void onPhone(LampFarm farm, Held held) {
        try (farm) {
            BrowserStation.withPhone(context -> held.hold(farm, new Phone(context, farm.address())));
        }
    }

    /** A farm and a phone. */
    private interface Held {
        void hold(LampFarm farm, Phone phone);
    }
}
