package eggwright.desk.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import eggwright.desk.Desk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a form does under the hands of a person. */
final class FormsBrowserTest {
    private static Desk desk;

    @BeforeAll
    static void openTheDesk() {
        desk = DemoDesk.open();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    private static void open(Page page, String path) {
        BrowserStation.go(page, desk.address().resolve(path));
    }

    @Test
    void enter_keepsTheNote_alsoWhereTheFormHasRows() {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            open(page, "/notes/eggs-set");
            page.locator("#f-lot-0-tray").fill("197");
            page.locator("#f-lot-0-pen").selectOption("Barn");
            page.locator("#f-lot-0-eggs").fill("12");
            page.locator("#f-lot-0-eggs").press("Enter");
            assertTrue(
                    page.content().contains("Kept. It is in the book."),
                    page.locator("main").innerText());
        });
    }

    @Test
    void gathering_takesTheSpecies_fromThePen() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            open(page, "/notes/eggs-gathered");
            assertEquals("", page.locator("#f-species").inputValue());
            BrowserStation.keepPicture(page, "form-gathered");
            page.locator("#f-pen").selectOption("Barn");
            page.locator("#f-kept").fill("31");
            page.locator("#f-kept").press("Enter");
            assertTrue(page.content().contains("Kept. It is in the book."));
            assertTrue(page.locator("main").innerText().contains("pheasant"));
        });
    }

    @Test
    void layDates_areOfferedFromTheEggRoom() {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            open(page, "/notes/eggs-set");
            var offered = page.locator("#f-lot-0-laid_from-offers option");
            assertTrue(offered.count() > 0, "dates of the egg room");
            assertTrue(offered.first().getAttribute("value").matches("2027-\\d\\d-\\d\\d"));
            assertTrue(
                    offered.first().textContent().contains("pen "),
                    offered.first().textContent());
            assertEquals(
                    "f-lot-0-laid_from-offers",
                    page.locator("#f-lot-0-laid_from").getAttribute("list"));
        });
    }

    @Test
    void whatIsToBeMended_isStillSaid_afterColoursWereChosen_andRowsAdded() {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            open(page, "/notes/eggs-set");
            page.locator("#f-lot-0-tray").fill("198");
            page.locator("button.main").click();
            assertTrue(page.locator("#to-mend").isVisible());
            var said = page.locator("#to-mend").innerText();
            page.locator("button.look[value=dusk]").click();
            assertEquals(said, page.locator("#to-mend").innerText());
            page.locator("button[name=more]").click();
            assertEquals(said, page.locator("#to-mend").innerText());
            assertFalse(page.content().contains("Kept. It is in the book."));
        });
    }
}
