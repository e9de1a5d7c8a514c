package eggwright.desk.link;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import eggwright.book.fold.Ledger;
import eggwright.book.name.TrayName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.SetPicture;
import eggwright.desk.NetworkDesk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import eggwright.desk.joining.Devices;
import eggwright.desk.who.Role;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the label on a tray, or the card of a load, to that tray at the lamp. */
final class LinkToTheLampTest {
    @TempDir
    private static Path folder;

    private static NetworkDesk farm;
    private static String hand;

    @BeforeAll
    static void openTheDesk() {
        farm = new NetworkDesk(folder);
        hand = farm.joined(Role.HAND, "Wren’s phone");
    }

    @AfterAll
    static void closeTheDesk() {
        farm.close();
    }

    private static Stream<LoadPicture> loads() {
        return Ledger.of(farm.store.all()).picture().sets().values().stream()
                .filter(SetPicture::isRunning)
                .flatMap(set -> set.loads().values().stream());
    }

    private static LoadPicture inSetter() {
        return loads().filter(load -> load.phase() == LoadPhase.IN_SETTER)
                .max(Comparator.comparing(LoadPicture::setOn))
                .orElseThrow();
    }

    private static String at(LoadPicture load) {
        return load.ref().set() + "/" + load.ref().tray();
    }

    private static String leads(String path, String cookie) throws IOException {
        var answer = farm.phone("GET", path, cookie, Map.of(), "");
        assertEquals(303, answer.status(), path);
        return answer.header("Location");
    }

    @Test
    void labelAndCard_leadAHandToTheLamp_andALookerToTheSet() throws IOException {
        var load = inSetter();
        assertEquals("/lamp#" + at(load), leads("/t/" + load.ref().tray(), hand));
        assertEquals("/lamp#" + at(load), leads("/l/" + at(load), hand));
        var looker = farm.joined(Role.LOOKER, "Hall screen");
        assertEquals("/sets/" + load.ref().set(), leads("/l/" + at(load), looker));
    }

    @Test
    void card_ofALoadThatIsNoMoreForTheLamp_leadsToItsSet() throws IOException {
        var hatching = loads().filter(load -> load.phase() == LoadPhase.IN_HATCHER)
                .findFirst()
                .orElseThrow();
        assertEquals("/sets/" + hatching.ref().set(), leads("/l/" + at(hatching), hand));
    }

    @Test
    void label_isNothingToSomebodyWhoHasNotJoined() throws IOException {
        var load = inSetter();
        for (var path : List.of("/t/" + load.ref().tray(), "/l/" + at(load))) {
            var answer = farm.phone("GET", path, "", Map.of(), "");
            assertEquals(401, answer.status(), path);
            assertFalse(answer.body().contains("/lamp#"), "it is not even said what is in it");
        }
    }

    @Test
    void label_ofATrayThatIsUnknown_orHasNoLoadInItNow_saysSo() throws IOException {
        var running = loads().map(load -> load.ref().tray()).toList();
        var emptied = Ledger.of(farm.store.all()).picture().sets().values().stream()
                .flatMap(set -> set.loads().keySet().stream())
                .filter(Predicate.not(running::contains))
                .map(TrayName::text)
                .findFirst();
        for (var tray : Stream.concat(emptied.stream(), Stream.of("9999")).toList()) {
            var answer = farm.phone("GET", "/t/" + tray, hand, Map.of(), "");
            assertEquals(404, answer.status(), tray);
            assertTrue(answer.body().contains("There is no load in tray " + tray + " now"), answer.body());
        }
        var other = farm.phone("GET", "/l/27-1/9999", hand, Map.of(), "");
        assertEquals(404, other.status());
        assertTrue(other.body().contains("There is no load in tray 9999 of set 27-1"), other.body());
    }

    /** A phone that has just joined, and never had the lamp open, scans a label: it asks who counts, then has the tray. */
    @Test
    void freshPhone_thatScansALabel_hasThatTrayInHand() throws Exception {
        var load = inSetter();
        var key = farm.lan.authority().certificate().getPublicKey().getEncoded();
        var pin = Base64.getEncoder()
                .encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
        var asAPhone = List.of(
                "--host-resolver-rules=MAP " + NetworkDesk.NAME + " 127.0.0.1",
                "--ignore-certificate-errors-spki-list=" + pin);
        var invited = (Devices.Invitation.Code) farm.devices.invite(Role.HAND);
        BrowserStation.with(asAPhone, Screen.PHONE, ColorScheme.DARK, page -> {
            var origin = URI.create(farm.origin());
            BrowserStation.go(page, origin.resolve("/join?code=" + invited.code()));
            page.locator("#f-name").fill("Linnet’s phone");
            page.locator("button.main").click();
            page.navigate(origin.resolve("/t/" + load.ref().tray()).toString());
            page.waitForSelector(".other .field input");
            page.locator(".field input").fill("Linnet");
            page.locator(".field input").blur();
            page.locator(".other .away").click();
            page.waitForSelector(".view.tray:not([hidden])");
            assertEquals(
                    "Tray " + load.ref().tray(),
                    page.locator(".view.tray .number").textContent());
            assertEquals(origin.resolve("/lamp").toString(), page.url(), "a reload is a reload, and no second scan");

            // Another label, while this tray is open.
            var next = loads().filter(
                            l -> l.phase() == LoadPhase.IN_SETTER && !l.ref().equals(load.ref()))
                    .findFirst()
                    .orElseThrow();
            page.evaluate("at => { location.hash = '#' + at; }", at(next));
            page.waitForFunction(
                    "tray => document.querySelector('.view.tray .number').textContent === 'Tray ' + tray",
                    next.ref().tray().text());

            // One that is not for the lamp is said, and does nothing.
            page.locator(".view.tray .away").click();
            page.waitForSelector(".view.round:not([hidden])");
            page.evaluate("() => { location.hash = '#27-1/9999'; }");
            page.waitForSelector(".round .note:has-text('Tray 9999 of set 27-1 is not for the lamp now')");
        });
    }

    /** Who has which tray, from one phone to the other. */
    @Test
    void trayInTheHandOfOne_isToldToTheOther() throws IOException {
        var load = inSetter();
        var other = farm.joined(Role.HAND, "Robin’s phone");
        var said = farm.phone(
                "POST",
                "/api/lamp/holding",
                hand,
                Map.of(),
                "{\"set\":\"" + load.ref().set() + "\",\"tray\":\"" + load.ref().tray()
                        + "\",\"who\":\"Wren\",\"state\":\"has\"}");
        assertEquals(200, said.status(), said.body());
        var told = "{\"set\":\"" + load.ref().set() + "\",\"tray\":\""
                + load.ref().tray() + "\",\"who\":\"Wren\",\"state\":\"has\"}";
        assertTrue(others(other).contains(told), others(other));
        assertFalse(others(hand).contains(told), "what it has itself it need not be told");
    }

    private static String others(String cookie) throws IOException {
        var round = farm.phone("GET", "/api/lamp/round", cookie, Map.of(), "").body();
        return round.substring(round.indexOf("\"others\":"));
    }
}
