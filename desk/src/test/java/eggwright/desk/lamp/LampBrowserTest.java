package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Effective;
import eggwright.book.fold.Ledger;
import eggwright.book.name.TrayName;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.desk.browser.BrowserStation;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The lamp page under a thumb, in a real browser, on the invented farm in mid-season. */
final class LampBrowserTest {
    @Test
    void tray_withTwoClears_isFourTouches_andInTheBook() {
        onPhone((farm, phone) -> {
            phone.open("Wren");
            var tray = phone.tray();
            phone.touch(".next [data-key^=take]");
            phone.key("clear");
            phone.key("clear");
            phone.key("done");
            phone.waitUntilSent();

            var look = only(farm, "Wren");
            assertEquals(new TrayName(tray), look.scope().tray());
            assertEquals(List.of(FindingCount.removed(Finding.CLEAR, 2)), look.findings());
        });
    }

    @Test
    void keys_areLargeApartAndLow_andPalmsAndBouncesAreNoTouches() {
        onPhone((farm, phone) -> {
            var page = phone.open("Wren");
            phone.touch(".next [data-key^=take]");
            var keys = page.locator(".keys .key").all().stream()
                    .map(k -> k.boundingBox())
                    .toList();
            assertEquals(6, keys.size());
            for (var key : keys) {
                assertTrue(key.width >= 96 && key.height >= 96, key.width + " by " + key.height);
                assertTrue(key.y >= 370, "in the lower half: " + key.y);
            }
            assertTrue(keys.get(1).x - keys.get(0).x - keys.get(0).width >= 12);
            assertTrue(keys.get(3).y - keys.get(0).y - keys.get(0).height >= 12);

            // Two presses within 120 ms are one; a palm is none; a finger that slides off is none.
            page.evaluate("""
                    () => {
                      const key = document.querySelector('.view.tray [data-key=dead]');
                      const at = key.getBoundingClientRect();
                      const finger = (type, id, more = {}) => key.dispatchEvent(new PointerEvent(type, {
                        bubbles: true, pointerId: id, pointerType: 'touch', isPrimary: true, width: 20, height: 20,
                        clientX: at.x + 40, clientY: at.y + 40, ...more }));
                      finger('pointerdown', 11); finger('pointerup', 11);
                      finger('pointerdown', 12); finger('pointerup', 12);
                    }
                    """);
            page.waitForTimeout(200);
            page.evaluate("""
                    () => {
                      const key = document.querySelector('.view.tray [data-key=dead]');
                      const at = key.getBoundingClientRect();
                      const finger = (type, id, more = {}) => key.dispatchEvent(new PointerEvent(type, {
                        bubbles: true, pointerId: id, pointerType: 'touch', isPrimary: true, width: 20, height: 20,
                        clientX: at.x + 40, clientY: at.y + 40, ...more }));
                      finger('pointerdown', 13, { width: 90, height: 70 }); finger('pointerup', 13, { width: 90, height: 70 });
                      finger('pointerdown', 14); finger('pointerup', 14, { clientX: at.x - 200 });
                    }
                    """);
            assertEquals("dead1", page.locator(".view.tray [data-key=dead]").textContent());
        });
    }

    /** Twelve trays, one thumb and no signal; a day later back in reach. The page is closed and opened on the way. */
    @Test
    void twelveTrays_withoutSignal_areInTheBook_onceThePhoneIsInReach() {
        onPhone((farm, phone) -> {
            phone.open("Linnet");
            phone.waitUntilKept();
            phone.outOfReach();
            phone.kill();
            phone.open("Linnet");
            var touched = new TreeMap<String, Integer>();
            for (int n = 0; n < 12; n++) {
                if (n >= 9) {
                    // Nine were due; the others are found among all trays.
                    phone.unfold();
                    phone.touch("details li:nth-child(" + (n - 8) + ") .tray");
                } else {
                    phone.touch(".next [data-key^=take]");
                }
                var tray = phone.page().locator(".view.tray .where").textContent() + phone.tray();
                int clears = n % 4;
                for (int egg = 0; egg < clears; egg++) {
                    phone.key("clear");
                }
                if (n == 5) {
                    phone.settle();
                    phone.kill();
                    phone.open("Linnet");
                }
                phone.key("done");
                phone.page().waitForSelector(".after");
                touched.put(tray, clears);
            }
            assertEquals(12, touched.size());
            assertTrue(phone.page().locator(".desk").textContent().contains("12 notes are only on this phone"));
            assertEquals(List.of(), looks(farm, "Linnet").toList());

            phone.inReach();
            phone.waitUntilSent();
            var found = looks(farm, "Linnet").toList();
            assertEquals(12, found.size());
            assertEquals(
                    touched.values().stream().mapToInt(Integer::intValue).sum(),
                    found.stream().mapToInt(l -> l.seen(Finding.CLEAR)).sum());
        });
    }

    @Test
    void desk_thatStopsAndComesBack_getsEachCountOnce() {
        onPhone((farm, phone) -> {
            phone.open("Wren");
            phone.waitUntilKept();
            farm.stop();
            phone.touch(".next [data-key^=take]");
            phone.key("rot");
            phone.key("done");
            phone.page().waitForFunction("() => document.querySelector('.desk').textContent.includes('out of reach')");
            farm.startAgain();
            phone.touch(".view.round [data-key=send]");
            phone.waitUntilSent();
            assertEquals(1, only(farm, "Wren").seen(Finding.ROT));
        });
    }

    @Test
    void undo_reachesIntoTheTrayJustDone_alsoWhenTheDeskHasIt() {
        onPhone((farm, phone) -> {
            phone.open("Wren");
            phone.touch(".next [data-key^=take]");
            phone.key("clear");
            phone.key("dead");
            phone.key("done");
            phone.waitUntilSent();
            phone.touch(".after [data-key=undo]");
            phone.key("undo");
            phone.key("cracked");
            phone.touch(".view.tray [data-key=stays]");
            phone.key("done");
            phone.waitUntilSent();

            var look = only(farm, "Wren");
            assertEquals(
                    List.of(FindingCount.removed(Finding.CLEAR, 1), FindingCount.left(Finding.CRACKED, 1)),
                    look.findings());
        });
    }

    @Test
    void twoPhones_onOneTray_areBothKept_andShownToSettle() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(one -> BrowserStation.withPhone(other -> {
                var wren = new Phone(one, farm.address());
                var linnet = new Phone(other, farm.address());
                wren.open("Wren");
                linnet.open("Linnet");
                var tray = wren.tray();
                assertEquals(tray, linnet.tray());
                wren.touch(".next [data-key^=take]");
                linnet.touch(".next [data-key^=take]");
                for (int egg = 0; egg < 40; egg++) {
                    wren.key(egg % 2 == 0 ? "clear" : "dead");
                    linnet.key(egg % 2 == 0 ? "clear" : "rot");
                }
                wren.key("done");
                linnet.key("done");
                wren.waitUntilSent();
                linnet.waitUntilSent();

                assertEquals(1, looks(farm, "Wren").count());
                assertEquals(1, looks(farm, "Linnet").count());
                assertTrue(Ledger.of(farm.kept()).picture().discrepancies().stream()
                        .anyMatch(d -> d.kind() == DiscrepancyKind.MORE_OUT_THAN_IN
                                || d.kind() == DiscrepancyKind.MORE_SEEN_THAN_IN));
            }));
        }
    }

    @Test
    void buttons_ofAClickerOrKeyboard_doWhatFingersDo() {
        onPhone((farm, phone) -> {
            var page = phone.open("Wren");
            page.keyboard().press("Enter");
            page.waitForSelector(".view.tray .number");
            page.keyboard().press("Digit1");
            page.keyboard().press("Digit6");
            page.keyboard().press("Backspace");
            page.waitForTimeout(150);
            page.keyboard().press("Enter");
            page.waitForSelector(".after");
            phone.waitUntilSent();
            assertEquals(
                    List.of(FindingCount.removed(Finding.CLEAR, 1)),
                    only(farm, "Wren").findings());
        });
    }

    /** A farm of its own for each test, since counts empty trays. */
    private static void onPhone(Held held) {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> held.hold(farm, new Phone(context, farm.address())));
        }
    }

    /** A farm and a phone. */
    private interface Held {
        void hold(LampFarm farm, Phone phone);
    }

    private static Looked only(LampFarm farm, String who) {
        var found = looks(farm, who).toList();
        assertEquals(1, found.size(), found.toString());
        return found.getFirst();
    }

    /** What counts, mends taken in; the invented farm has a Wren too, so only what was noted in the last minutes. */
    private static Stream<Looked> looks(LampFarm farm, String who) {
        return Ledger.of(farm.kept()).inOrder().stream()
                .filter(e -> e.entry().who().text().equals(who))
                .filter(farm::isOfNow)
                .map(Effective::payload)
                .flatMap(p -> p instanceof Looked look ? Stream.of(look) : Stream.empty());
    }
}
