package eggwright.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every piece of the desk in a real browser. */
final class PatternBrowserTest {
    private static Desk desk;

    @BeforeAll
    static void openTheDesk() {
        desk = PatternDesk.open();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    @Test
    void pattern_canBeReadByAll_onBothScreensLightAndDark() {
        BrowserStation.look(desk.address().resolve("/pattern"), "pattern");
    }

    @Test
    void aPageThatIsNotThere_canBeReadByAll() {
        BrowserStation.look(desk.address().resolve("/pattern/missing"), "not-there");
    }

    @Test
    void aRefusedForm_canBeReadByAll() {
        BrowserStation.look(desk.address().resolve("/pattern/refused"), "refused");
    }

    @Test
    void aForm_keepsAllThatWasTyped_whenMoreRowsAreAskedFor() {
        BrowserStation.with(Screen.PHONE, ColorScheme.DARK, page -> {
            BrowserStation.go(page, desk.address().resolve("/pattern"));
            page.getByLabel("Eggs kept").fill("fifty-four");
            page.getByLabel("Remark").fill("wind & <rain>");
            page.getByLabel("Wet").check();
            page.getByText("More trays").click();

            assertEquals(7, page.locator(".row").count());
            assertEquals("fifty-four", page.getByLabel("Eggs kept").inputValue());
            assertEquals("wind & <rain>", page.getByLabel("Remark").inputValue());
            assertTrue(page.getByLabel("Wet").isChecked());
        });
    }

    @Test
    void aRefusedForm_leadsFromTheTopToItsField() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/pattern"));
            page.locator("#f-tray-1-eggs").fill("62");
            page.getByText("Keep this gathering").click();
            page.locator("#to-mend").getByText("Tray 7 holds 54 eggs").click();

            assertEquals("#f-tray-1-eggs", page.evaluate("() => location.hash"));
            assertEquals("62", page.locator("#f-tray-1-eggs").inputValue());
            var top = page.evaluate("() => document.querySelector(':target').getBoundingClientRect().top");
            assertTrue(((Number) top).doubleValue() >= 0, () -> "The field stands at " + top);
        });
    }

    @Test
    void skipLink_isTheFirstStop_andGoesToThePage() {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/pattern"));
            page.keyboard().press("Tab");
            assertEquals("Skip to the page", focused(page));
            BrowserStation.keepPicture(page, "skip-link");
            page.keyboard().press("Enter");
            assertEquals("page", page.evaluate("() => document.activeElement.id"));
        });
    }

    @Test
    void theLook_staysChosen_withoutScript() {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/pattern"));
            page.getByText("Dusk", new Page.GetByTextOptions().setExact(true)).click();

            assertTrue(page.url().endsWith("/pattern"), page.url());
            assertEquals("rgb(23, 25, 20)", ground(page));
        });
    }

    @Test
    void print_isBlackOnWhite_evenInTheDark() {
        BrowserStation.with(Screen.DESK, ColorScheme.DARK, page -> {
            BrowserStation.go(page, desk.address().resolve("/pattern"));
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            BrowserStation.keepPicture(page, "pattern-print");

            assertEquals("rgb(255, 255, 255)", ground(page));
            assertEquals("rgb(0, 0, 0)", page.evaluate("() => getComputedStyle(document.querySelector('h1')).color"));
        });
    }

    @Test
    void digits_lineUp_inTables() {
        BrowserStation.with(Screen.DESK, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/pattern"));
            var widths = page.evaluate("""
                    () => { const td = document.querySelector('td.n');
                      const width = t => { const s = document.createElement('span'); s.textContent = t;
                        td.append(s); const w = s.getBoundingClientRect().width; s.remove(); return w; };
                      return document.fonts.check('16px "Atkinson Next"')
                        && Math.abs(width('1111') - width('0000')) < 0.01 && Math.abs(width('7777') - width('0000')) < 0.01; }
                    """);
            assertEquals(true, widths);
        });
    }

    private static Object focused(Page page) {
        return page.evaluate("() => document.activeElement.textContent");
    }

    private static Object ground(Page page) {
        return page.evaluate("() => getComputedStyle(document.documentElement).backgroundColor");
    }
}
