package eggwright.desk.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import eggwright.book.name.MachineName;
import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.climate.reading.Readings;
import eggwright.climate.reading.SensorName;
import eggwright.desk.Desk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import eggwright.desk.farm.DemoDesk;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The setter of the invented farm has been cold for forty minutes; the egg room stands at 57 °F. */
final class OutsideBrowserTest {
    private static Desk desk;

    @BeforeAll
    static void openTheDesk() {
        var readings = new MemoryReadings();
        var setter = new ReadingPlace.InMachine(new MachineName("Setter"));
        readings.take(air(setter), every(5, 4 * 24 * 60, 40, 99.5, 92));
        readings.take(air(new ReadingPlace.EggRoom()), every(5, 4 * 24 * 60, 0, 57, 57));
        desk = DemoDesk.open(readings);
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    private static Channel air(ReadingPlace place) {
        return new Channel(place, SensorName.ONLY, Quantity.AIR_TEMPERATURE, ReadingUnit.FAHRENHEIT);
    }

    private static Readings every(int step, int minutes, int lastMinutes, double before, double last) {
        var all = Readings.NONE;
        for (int ago = minutes; ago > 0; ago -= step) {
            all = all.and(
                    Readings.of(DemoDesk.NOON.minus(Duration.ofMinutes(ago)), ago <= lastMinutes ? last : before));
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/sets", "/egg-room", "/book", "/settings", "/notes", "/no-such-page", "/lamp"})
    void everyOpenPage_tellsOfTheColdSetter(String path) {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve(path));
            page.locator("#outside li").first().waitFor();
            var told = page.locator("#outside").textContent();
            assertTrue(told.contains("Setter is too cold: 92.0\u00a0°F"), told);
            assertTrue(told.contains("since Wed 12 May 11:20"), told);
            assertTrue(told.contains("This is no alarm"), told);
            assertFalse(told.contains("egg room"), told);
        });
    }

    @Test
    void notice_canBeReadByAll() {
        BrowserStation.look(desk.address(), "outside-today");
        BrowserStation.look(desk.address().resolve("/air/egg-room"), "air-egg-room");
        BrowserStation.look(desk.address().resolve("/air/brooder"), "air-brooder");
    }

    @Test
    void place_isHeard_onceThePageWasTouched_untilItIsHushed() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address());
            page.getByText("Let this page sound").click();
            page.locator("#outside[data-heard]").waitFor();
            page.getByText("Quiet for 30 minutes").click();
            var heard = page.locator("#outside").getAttribute("data-heard");
            page.waitForTimeout(6500);
            assertEquals(heard, page.locator("#outside").getAttribute("data-heard"));
            BrowserStation.go(page, desk.address().resolve("/pens"));
            assertFalse(page.getByText("Let this page sound").isVisible());
        });
    }

    @Test
    void notice_goes_whenAllIsWell_andSaysSo_whenTheDeskIsGone() {
        BrowserStation.withPhone(phone -> {
            var page = phone.newPage();
            page.navigate(desk.address().toString());
            page.locator("#outside li").first().waitFor();
            page.route(
                    "**/api/outside",
                    route -> route.fulfill(new Route.FulfillOptions()
                            .setContentType("application/json")
                            .setBody("{\"key\":\"\",\"places\":[]}")));
            askAgain(page);
            page.locator("#outside")
                    .waitFor(new com.microsoft.playwright.Locator.WaitForOptions()
                            .setState(com.microsoft.playwright.options.WaitForSelectorState.HIDDEN));
            page.unroute("**/api/outside");
            page.route("**/api/outside", Route::abort);
            for (int i = 0; i < 3; i++) {
                askAgain(page);
                page.waitForTimeout(100);
            }
            page.getByText("The desk does not answer").waitFor();
        });
    }

    private static void askAgain(Page page) {
        page.evaluate("document.dispatchEvent(new Event('visibilitychange'))");
    }

    @Test
    void lamp_keepsItsKeysOnTheScreen_underTheNotice() {
        BrowserStation.withPhone(phone -> {
            var page = phone.newPage();
            page.navigate(desk.address().resolve("/lamp").toString());
            page.locator("#outside li").first().waitFor();
            page.screenshot(new Page.ScreenshotOptions()
                    .setPath(java.nio.file.Path.of("target", "screenshots", "outside-lamp.png")));
            assertTrue((Boolean) page.evaluate("document.documentElement.scrollHeight <= innerHeight"));
        });
    }
}
