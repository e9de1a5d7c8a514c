package eggwright.desk.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import eggwright.desk.Desk;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The whole round on the invented farm, on a phone, by links alone: a gathering, a set, candling, two thin trays pooled, a
 * transfer, a take-off in two pulls counted by set, a break-out, a slip mended, and the numbers read. Counts the taps: typing
 * into a field is one, as is choosing from a list.
 */
final class WholeRoundBrowserTest {
    private static final Pattern EGGS_OF_A_TRAY = Pattern.compile("tray (\\S+), (\\d+) eggs");

    private static Desk desk;

    private final Map<String, Integer> taps = new LinkedHashMap<>();
    private String step = "";

    @BeforeAll
    static void openTheDesk() {
        desk = DemoDesk.open();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    private void begin(String name) {
        step = name;
        taps.put(name, 0);
    }

    private void tapped() {
        taps.merge(step, 1, Integer::sum);
    }

    private void tap(Locator what) {
        what.first().click();
        tapped();
    }

    private void link(Page page, String text) {
        tap(page.locator("main")
                .getByRole(
                        AriaRole.LINK,
                        new Locator.GetByRoleOptions().setName(text).setExact(true)));
    }

    private void place(Page page, String name) {
        tap(page.locator("nav.bar").getByText(name));
    }

    private void fill(Page page, String field, String text) {
        page.locator("#f-" + field).fill(text);
        tapped();
    }

    private void choose(Page page, String field, String option) {
        page.locator("#f-" + field).selectOption(option);
        tapped();
    }

    private void keep(Page page) {
        BrowserStation.mustFit(page, step);
        BrowserStation.keepPicture(page, "round-" + taps.size() + "-" + step.replace(' ', '-'));
        tap(page.locator("button.main"));
        assertTrue(
                page.content().contains("Kept. It is in the book."),
                step + ": " + page.locator("main").innerText());
    }

    @Test
    void wholeRound_isNotedOnAPhone_byLinksAlone() {
        BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
            BrowserStation.go(page, desk.address());

            begin("gathering");
            link(page, "Note something");
            link(page, "Eggs gathered");
            choose(page, "pen", "Barn");
            fill(page, "kept", "31");
            keep(page);

            begin("set");
            place(page, "Note it");
            link(page, "Eggs set");
            assertEquals("27-8", page.locator("#f-set").inputValue(), "the next set is offered");
            for (var tray : new String[][] {{"0", "190", "Barn", "31"}, {"1", "191", "Willow", "12"}}) {
                fill(page, "lot-" + tray[0] + "-tray", tray[1]);
                choose(page, "lot-" + tray[0] + "-pen", tray[2]);
                fill(page, "lot-" + tray[0] + "-eggs", tray[3]);
            }
            keep(page);

            begin("candle two trays");
            place(page, "Today");
            var candling = page.locator(".work > li").filter(new Locator.FilterOptions().setHasText("Candle set 27-6"));
            tap(candling.locator("summary"));
            var first = EGGS_OF_A_TRAY.matcher(candling.locator("a.of").first().textContent());
            assertTrue(first.find());
            tap(candling.locator("a.of"));
            fill(page, "seen_clear", "4");
            fill(page, "seen_live", Integer.toString(Integer.parseInt(first.group(2)) - 4));
            keep(page);
            var next = page.getByText(Pattern.compile("Candle tray \\S+ next"));
            var second = next.textContent().replaceAll("Candle tray (\\S+) next", "$1");
            tap(next);
            assertEquals(second, page.locator("#f-tray").inputValue());
            fill(page, "seen_clear", "6");
            keep(page);

            begin("pool two trays");
            link(page, "Go to set 27-6");
            link(page, "Pool trays");
            fill(page, "from_tray", first.group(1));
            fill(page, "to_tray", second);
            keep(page);

            begin("transfer a set");
            place(page, "Sets");
            link(page, "27-5");
            link(page, "Transfer");
            assertEquals("Hatcher", page.locator("#f-hatcher").inputValue(), "the only hatcher is offered");
            keep(page);

            begin("take off in two pulls");
            place(page, "Sets");
            link(page, "27-4");
            link(page, "Take off");
            tap(page.getByText("More chicks are to come"));
            fill(page, "saleable", "120");
            keep(page);
            link(page, "Note the next pull");
            fill(page, "saleable", "60");
            fill(page, "culled", "3");
            fill(page, "dead_in_basket", "2");
            keep(page);

            begin("break out");
            link(page, "Open eggs of set 27-4");
            fill(page, "class_late_dead", "10");
            fill(page, "class_pipped_dead", "6");
            keep(page);

            begin("mend a slip");
            link(page, "Mend it");
            fill(page, "class_late_dead", "11");
            keep(page);
            assertTrue(page.locator("dl.pairs").textContent().contains("11"));

            begin("read the numbers");
            link(page, "Go to set 27-4");
            BrowserStation.keepPicture(page, "round-9-numbers");
            var numbers = page.locator("main").textContent();
            assertTrue(numbers.contains("180 of "), "saleable chicks of both pulls: " + numbers);
            assertTrue(numbers.contains("late dead"), numbers);

            assertEquals(
                    Map.of(
                            "gathering", 5,
                            "set", 9,
                            "candle two trays", 9,
                            "pool two trays", 5,
                            "transfer a set", 4,
                            "take off in two pulls", 11,
                            "break out", 4,
                            "mend a slip", 3,
                            "read the numbers", 1),
                    taps);
        });
    }
}
