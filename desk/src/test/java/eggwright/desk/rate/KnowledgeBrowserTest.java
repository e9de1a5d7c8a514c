package eggwright.desk.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import eggwright.desk.Desk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import eggwright.desk.farm.DemoDesk;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages that show what is known, in a real browser. */
final class KnowledgeBrowserTest {
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
        "/rates, rates",
        "/rates?by=tray, rates-tray",
        "/rates?by=lay-week, rates-lay-week",
        "/rates?by=pen&of=Willow, rates-willow",
        "/rates?by=pen&of=Ditch%2BWillow, rates-joint",
        "/sets/27-2, set-over",
        "/sets/27-2/forecast, set-foreseen"
    })
    void page_canBeReadByAll_onBothScreensLightAndDark(String path, String name) {
        BrowserStation.look(desk.address().resolve(path), "knowledge-" + name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/pens",
                "/sets",
                "/sets/27-5",
                "/egg-room",
                "/rates",
                "/rates?by=tray",
                "/rates?by=machine",
                "/rates?by=storage-days",
                "/rates?by=pen&of=Willow"
            })
    void noTable_isWiderThanAPhone_withAllNumbersOpen(String path) {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve(path));
            page.evaluate("() => document.querySelectorAll('main details').forEach(d => { d.open = true })");
            BrowserStation.mustFit(page, path);
            assertEquals("", page.evaluate("""
                            () => [...document.querySelectorAll('.wide')].filter(e => e.scrollWidth > e.clientWidth + 1)
                              .map(e => e.getAttribute('aria-label')).join()
                            """), path);
        });
    }

    /** Numbers of many groups lie behind one touch, and opened are still to be lived with. */
    @ParameterizedTest
    @ValueSource(strings = {"/rates", "/rates?by=lay-week", "/rates?by=set-week"})
    void rates_canBeReadOnAPhone_foldedAndOpen(String path) {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve(path));
            var folded = page.evaluate("() => document.documentElement.scrollHeight / window.innerHeight");
            assertTrue(((Number) folded).doubleValue() < 8, path + " is so many screens long: " + folded);
            page.evaluate(
                    "() => document.querySelectorAll('main > section > details').forEach(d => { d.open = true })");
            BrowserStation.keepPicture(page, "knowledge-open-" + path.replaceAll("\\W+", "-"));
            var row = page.evaluate(
                    "() => Math.max(...[...document.querySelectorAll('.flow tbody tr')].map(r => r.getBoundingClientRect().height))");
            assertTrue(((Number) row).doubleValue() < 260, path + " has a row so high: " + row);
        });
    }

    /** What is drawn is inside its drawing, on the narrowest screen too. */
    @ParameterizedTest
    @ValueSource(strings = {"/pens", "/sets", "/sets/27-1", "/sets/27-5", "/rates?by=lay-week", "/rates?by=set"})
    void noWord_ofAPicture_isCutOff(String path) {
        for (var screen : Screen.values()) {
            BrowserStation.with(screen, ColorScheme.LIGHT, page -> {
                BrowserStation.go(page, desk.address().resolve(path));
                assertEquals("", page.evaluate("""
                                () => [...document.querySelectorAll('.picture svg text')].filter(t => {
                                  const r = t.getBoundingClientRect();
                                  return r.width > 0 && (r.left < 0 || r.right > window.innerWidth);
                                }).map(t => t.textContent).join()
                                """), path);
            });
        }
    }

    @Test
    void aWord_ofAPicture_liesOnNoOther() {
        for (var path : new String[] {"/pens", "/rates?by=lay-week", "/rates?by=machine", "/sets"}) {
            BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
                BrowserStation.go(page, desk.address().resolve(path));
                assertEquals("", page.evaluate("""
                                () => { const all = [...document.querySelectorAll('.picture svg text')]
                                    .map(t => [t.textContent, t.getBoundingClientRect()]).filter(t => t[1].width > 0);
                                  return all.flatMap(([a, p], i) => all.slice(i + 1)
                                    .filter(([b, q]) => p.left < q.right - 1 && q.left < p.right - 1
                                      && p.top < q.bottom - 4 && q.top < p.bottom - 4)
                                    .map(([b]) => a + ' / ' + b)).join(); }
                                """), path);
            });
        }
    }

    @Test
    void aPen_leadsToItsRates_andBackToAll() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/pens"));
            page.locator("main table")
                    .last()
                    .getByText("Willow", new com.microsoft.playwright.Locator.GetByTextOptions().setExact(true))
                    .click();
            assertEquals("Pen Willow", page.locator("h1").textContent());
            assertTrue(page.locator("main").textContent().contains("below the rest, hardly luck (1 in"));
            page.getByText("All rates by pen").click();
            assertEquals("Rates by pen", page.locator("h1").textContent());
            page.locator(".choices").getByText("Week of set").click();
            assertEquals("Rates by week of set", page.locator("h1").textContent());
        });
    }

    @Test
    void pictures_printInBlack() {
        BrowserStation.with(Screen.DESK, ColorScheme.DARK, page -> {
            BrowserStation.go(page, desk.address().resolve("/rates"));
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            BrowserStation.keepPicture(page, "knowledge-rates-print");
            assertEquals("rgb(0, 0, 0)", page.evaluate("""
                            () => [...new Set([...document.querySelectorAll('.picture svg text, .picture svg .fill')]
                              .map(e => getComputedStyle(e).fill))].join()
                            """));
        });
    }

    @Test
    void aSet_leadsToHowItsForecastWent_andWhatCame() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address().resolve("/sets/27-2"));
            page.getByText("How the forecast went").click();
            assertTrue(page.locator("figcaption").textContent().matches("(?s).*foreseen.*\\d+ came.*"));
            page.locator("main summary").click();
            assertEquals(4, page.locator("main tbody tr").count(), "the set day, two looks, and what came");
            page.getByText("Back to set 27-2").click();
            assertEquals("Set 27-2", page.locator("h1").textContent());
            BrowserStation.go(page, desk.address().resolve("/sets/27-7/forecast"));
            assertTrue(page.locator("figcaption").textContent().contains("no look has narrowed it yet"));
        });
    }

    @Test
    void whatIsNotThere_isSaid() {
        for (var path : new String[] {"/rates?by=colour", "/rates?by=pen&of=Nowhere"}) {
            BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
                BrowserStation.go(page, desk.address().resolve(path));
                assertTrue(page.content().contains("in the book. Nothing was changed."), page.content());
            });
        }
    }
}
