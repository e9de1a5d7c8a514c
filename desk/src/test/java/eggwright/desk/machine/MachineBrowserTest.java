package eggwright.desk.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import eggwright.desk.Desk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import eggwright.desk.farm.DemoDesk;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A machine's page in a real browser. */
final class MachineBrowserTest {
    private static Desk desk;

    @BeforeAll
    static void openTheDesk() {
        desk = DemoDesk.open();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    @ParameterizedTest
    @CsvSource({
        "/machines/Setter, setter",
        "/machines/Setter?span=season, setter-season",
        "/machines/Hatcher?span=week&dry=99.5C&wet=86F, hatcher",
        "/machines/wet-bulb-table, wet-bulb-table"
    })
    void page_canBeReadByAll_onBothScreensLightAndDark(String path, String name) {
        BrowserStation.look(desk.address().resolve(path), "machine-" + name);
    }

    /** From the list to the machine, back in time, and a pair of thermometers reckoned: by touch alone, without script. */
    @Test
    void keeper_looksBack_andReckons_onAPhone() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/machines"));
            page.getByText("Look at Setter").click();
            assertEquals("Setter", page.locator("h1").textContent());
            page.locator(".choices").getByText("Week").click();
            page.waitForURL("**span=week*");
            assertTrue(page.locator("#readings ~ p").first().textContent().contains("Wed 5 May"));
            page.locator(".actions").getByText("Earlier").click();
            page.waitForURL("**span=week&to=**");
            page.locator("#c-dry").fill("99.5F");
            page.locator("#c-wet").fill("86F");
            page.getByText("Reckon", new com.microsoft.playwright.Page.GetByTextOptions().setExact(true))
                    .click();
            assertTrue(page.locator("div[role=status]").textContent().contains("58"), page.url());
            assertTrue(page.url().contains("span=week&to="), page.url());
            page.locator(".actions").getByText("Later").click();
            BrowserStation.mustFit(page, "machine-looked-back");
        });
    }

    /** A chart pulled half its width to the right shows half a week earlier, in the same place, without a new page. */
    @Test
    void keeper_pullsAChartAlong() {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/machines/Setter?span=week"));
            page.evaluate("window.stayed = 'yes'");
            var chart = page.locator("#read svg.room-left").first();
            chart.scrollIntoViewIfNeeded();
            var box = chart.locator("svg").boundingBox();
            page.mouse().move(box.x + box.width / 4, box.y + 40);
            page.mouse().down();
            page.mouse().move(box.x + 3 * box.width / 4, box.y + 40);
            page.mouse().up();
            page.waitForFunction("() => location.search.includes('to=')");
            assertTrue(page.url().matches(".*to=2027-05-09T0[45].*"), page.url());
            assertTrue(page.locator("#read").getAttribute("data-to").matches("2027-05-09T0[45].*"));
            page.locator("#read .choices").getByText("Day").click();
            page.waitForFunction("() => location.search.includes('span=day')");
            assertEquals("Day", page.evaluate("document.activeElement.textContent"));
            assertEquals("yes", page.evaluate("window.stayed"));
            assertTrue(page.locator("#read-said").textContent().contains(" May "));
        });
    }

    /** The air of ISO 2533 at 1,500 m is 845.6 hPa. */
    @Test
    void keeper_notesTheAltitude_andAllIsReckonedForIt() {
        try (var high = DemoDesk.open(new NoReadings())) {
            BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
                BrowserStation.go(page, high.address().resolve("/machines/Setter"));
                page.getByText("Note the altitude").click();
                page.locator("#f-altitude").fill("1500m");
                page.locator("button.main").click();
                BrowserStation.go(page, high.address().resolve("/machines/Setter"));
                assertTrue(page.locator("main").textContent().contains("1500 m above the sea, as noted: 846 hPa"));
                assertEquals("1500m", page.locator("#c-altitude").inputValue());
                BrowserStation.go(page, high.address().resolve("/machines/wet-bulb-table"));
                assertTrue(page.locator("main").textContent().contains("846 hPa"));
            });
        }
    }
}
