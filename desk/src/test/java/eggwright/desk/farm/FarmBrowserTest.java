package eggwright.desk.farm;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import eggwright.desk.Desk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The farm's own pages in a real browser, on the invented farm in mid-season. */
final class FarmBrowserTest {
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
        "/, today",
        "/sets, sets",
        "/sets/27-5, set",
        "/egg-room, egg-room",
        "/pens, pens",
        "/candlers, candlers",
        "/machines, machines",
        "/notes, notes",
        "/notes/eggs-set, note-eggs-set",
        "/notes/looked?set=27-6&tray=60, note-looked",
        "/book, book",
        "/settings, settings",
        "/settings/people, people"
    })
    void page_canBeReadByAll_onBothScreensLightAndDark(String path, String name) {
        BrowserStation.look(desk.address().resolve(path), "farm-" + name);
    }

    @Test
    void gathering_isNoted_shownAsKept_andMended() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/notes/eggs-gathered"));
            page.locator("#f-pen").selectOption("Barn");
            page.locator("#f-kept").fill("31");
            page.locator("button.main").click();
            assertTrue(page.content().contains("Kept. It is in the book."));
            page.getByText("Mend it").click();
            page.locator("#f-kept").fill("30");
            page.getByText("Keep the mend").click();
            assertTrue(page.content().contains("30"), page.url());
            BrowserStation.keepPicture(page, "farm-mended");
        });
    }

    /** A year that a book cannot hold, and a form whose hidden id was lost: said at once, and what was typed stays. */
    @Test
    void impossibleYear_isSaidBesideItsField_andWhatWasTypedStays() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/notes/remark"));
            page.locator("#f-text").fill("The north pen needs wire.");
            page.locator("#f-happened").fill("1066-10-14T09:00");
            page.evaluate("() => { document.querySelector('[name=entry_id]').value = 'lost'; }");
            page.locator("button.main").click();
            assertTrue(page.locator("#f-happened-message").textContent().contains("1900 to 2099"));
            assertTrue(page.locator("#f-text").inputValue().contains("north pen"));
            page.locator("#f-happened").fill("2027-05-12T09:00");
            page.locator("#f-who").fill("Wren");
            page.locator("button.main").click();
            assertTrue(page.content().contains("Kept. It is in the book."));
            BrowserStation.go(page, desk.address().resolve("/notes/remark"));
            assertTrue(page.locator("#f-who").inputValue().equals("Wren"));
        });
    }

    /** A buyer gets a name, is offered by it, and is erased; the order keeps the bare number. */
    @Test
    void buyer_isNamed_offered_andErased() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/settings"));
            page.locator("main").getByText("Buyers").click();
            page.getByText("Add a buyer").click();
            var number = page.locator("#f-number").inputValue();
            page.locator("#f-name").fill("Tansy Holloway");
            page.locator("#f-address").fill("The Old Forge");
            BrowserStation.keepPicture(page, "farm-buyer-new");
            page.locator("button.main").click();
            assertTrue(page.content().contains("Tansy Holloway"));
            BrowserStation.mustFit(page, "farm-buyers");
            BrowserStation.mustBeReadable(page, "farm-buyers");
            BrowserStation.keepPicture(page, "farm-buyers");

            BrowserStation.go(page, desk.address().resolve("/notes/chicks-ordered"));
            assertTrue(page.locator("#f-buyer-offers").innerHTML().contains("Tansy Holloway"));
            page.locator("#f-order").fill("88");
            page.locator("#f-buyer").fill(number);
            page.locator("#f-chicks").fill("40");
            page.locator("#f-day").fill("2027-06-01");
            page.locator("button.main").click();
            assertTrue(page.content().contains(number + " (Tansy Holloway)"), page.content());
            var note = page.url();

            BrowserStation.go(page, desk.address().resolve("/settings/people/" + number + "/erase"));
            page.locator("button.main").click();
            assertTrue(page.content().contains("Erased."));
            page.navigate(note);
            assertTrue(page.content().contains(number));
            assertFalse(page.content().contains("Tansy"));
        });
    }
}
