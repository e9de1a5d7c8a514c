package eggwright.desk.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.SameSiteAttribute;
import eggwright.book.name.DeviceName;
import eggwright.desk.NetworkDesk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import eggwright.desk.who.Role;
import java.net.URI;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A phone’s way to the desk in a real browser: from the open page over joining to noting, and out again. The browser is told
 * where the name is, and to take certificates of this one authority.
 */
final class JoiningBrowserTest {
    @TempDir
    private static Path folder;

    private static NetworkDesk farm;
    private static List<String> asAPhone;

    @BeforeAll
    static void openTheDesk() throws Exception {
        farm = new NetworkDesk(folder);
        var key = farm.lan.authority().certificate().getPublicKey().getEncoded();
        var pin = Base64.getEncoder()
                .encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
        asAPhone = List.of(
                "--host-resolver-rules=MAP " + NetworkDesk.NAME + " 127.0.0.1",
                "--ignore-certificate-errors-spki-list=" + pin);
    }

    @AfterAll
    static void closeTheDesk() {
        farm.close();
    }

    private static URI network(String path) {
        return URI.create(farm.origin()).resolve(path);
    }

    private static void lookAt(Page page, String name) {
        BrowserStation.keepPicture(page, name);
        BrowserStation.mustFit(page, name);
        BrowserStation.mustBeReadable(page, name);
    }

    @Test
    void phone_findsItsWay_joins_notes_andIsOutWhenLetGo() {
        BrowserStation.with(asAPhone, Screen.PHONE, ColorScheme.LIGHT, page -> {
            page.navigate(farm.lan.firstSteps().toString());
            lookAt(page, "network-first-steps-360-light");
            BrowserStation.go(page, network("/"));
            assertEquals("This device has not joined", page.locator("h1").textContent());
            lookAt(page, "network-not-joined-360-light");

            page.locator("a.button").click();
            page.locator("#f-code").fill("WRNG-CDE2");
            page.locator("#f-name").fill("Wren’s phone");
            page.locator("button.main").click();
            assertTrue(page.locator("#to-mend").textContent().contains("This code is not good"));
            lookAt(page, "network-join-360-light");
            var invited = (eggwright.desk.joining.Devices.Invitation.Code) farm.devices.invite(Role.HAND);
            BrowserStation.go(page, network("/join?code=" + invited.code()));
            page.locator("#f-name").fill("Wren’s phone");
            page.locator("button.main").click();
            assertEquals(network("/").toString(), page.url());
            assertTrue(page.locator(".foot").textContent().contains("This device is Wren’s phone."));

            var cookie = page.context().cookies().stream()
                    .filter(c -> c.name.equals("__Host-device"))
                    .findFirst()
                    .orElseThrow();
            assertTrue(cookie.secure && cookie.httpOnly);
            assertEquals(SameSiteAttribute.STRICT, cookie.sameSite);
            assertEquals("", page.evaluate("() => document.cookie"));

            BrowserStation.go(page, network("/notes/remark"));
            page.locator("#f-text").fill("The wire of the north pen is mended.");
            page.locator("button.main").click();
            assertTrue(page.content().contains("Kept. It is in the book."));
            var last = farm.store.all().getLast().entry();
            assertEquals(new DeviceName("Wren’s phone"), last.device());

            farm.devices.all().forEach(device -> farm.devices.letGo(device.id()));
            BrowserStation.go(page, network("/notes/remark"));
            assertEquals("This device has not joined", page.locator("h1").textContent());
        });
    }

    @Test
    void looker_isShownNoFormsToNoteWith() {
        var invited = (eggwright.desk.joining.Devices.Invitation.Code) farm.devices.invite(Role.LOOKER);
        BrowserStation.with(asAPhone, Screen.DESK, ColorScheme.DARK, page -> {
            BrowserStation.go(page, network("/join?code=" + invited.code()));
            page.locator("#f-name").fill("Hall screen");
            page.locator("button.main").click();
            assertEquals(0, page.locator("nav a[href='/notes']").count());
            BrowserStation.go(page, network("/notes"));
            assertEquals("Not for this device", page.locator("h1").textContent());
            lookAt(page, "network-not-yours-1440-dark");
        });
    }

    @ParameterizedTest
    @CsvSource({
        "/settings/devices, devices",
        "/settings/devices/sheet, sheet",
        "/settings/passphrase, passphrase",
        "/sign-in, sign-in"
    })
    void pages_ofTheDesk_canBeReadByAll(String path, String name) {
        farm.devices.all().forEach(device -> farm.devices.letGo(device.id()));
        farm.joined(Role.HAND, "Wren’s phone " + name);
        farm.joined(Role.LOOKER, "Hall screen " + name);
        BrowserStation.look(farm.desk.address().resolve(path), "network-" + name);
    }

    @Test
    void code_isShownWithItsDrawing() {
        for (var screen : Screen.values()) {
            BrowserStation.with(screen, ColorScheme.DARK, page -> {
                BrowserStation.go(page, farm.desk.address().resolve("/settings/devices"));
                page.getByText("Show a code").click();
                assertTrue(page.locator(".code-shown").textContent().matches("[2-9A-Z]{4}-[2-9A-Z]{4}"));
                lookAt(page, "network-code-" + screen);
            });
        }
    }
}
