package eggwright.desk.lamp;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import eggwright.desk.browser.BrowserStation;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Measures the lamp page, with the processor slowed down four times; no part of the checks. Run with
 * {@code mvn -pl desk -am -Dtest=LampMeasure -Dsurefire.failIfNoSpecifiedTests=false test}; figures go to
 * {@code bench/README.md}.
 */
final class LampMeasure {
    private static final int TOUCHES = 1000;
    private static final int SLOWED = 4;
    /** The engine reports no event that took less. */
    private static final int SHORTEST_TOLD_MS = 16;

    private static final String OBSERVE = """
            () => {
              window.took = [];
              new PerformanceObserver(list => {
                for (const e of list.getEntries()) if (e.name === 'pointerup') window.took.push(e.duration);
              }).observe({ type: 'event', durationThreshold: 16, buffered: true });
            }
            """;

    @Test
    void touches_toPaintedCount_besideAnEmptyPage() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                var phone = new Phone(context, farm.address());
                phone.open("Wren");
                phone.touch(".next [data-key^=take]");
                slow(context, phone.page());
                phone.page().evaluate(OBSERVE);
                var keys = List.of("clear", "dead", "doubtful", "undo").stream()
                        .map(k -> phone.page()
                                .locator(".view.tray [data-key=" + k + "]")
                                .boundingBox())
                        .toList();
                for (int n = 0; n < TOUCHES; n++) {
                    var key = keys.get(n % keys.size());
                    phone.page().touchscreen().tap(key.x + key.width / 2, key.y + key.height / 2);
                }
                System.out.println("lamp: " + told(phone.page()));
            });
            BrowserStation.withPhone(context -> {
                var page = context.newPage();
                page.setContent("""
                        <meta name="viewport" content="width=device-width"><button style="width:96px;height:96px">0</button>
                        <script>
                          const key = document.querySelector('button');
                          key.addEventListener('pointerup', () => { key.textContent = Number(key.textContent) + 1; });
                        </script>
                        """);
                slow(context, page);
                page.evaluate(OBSERVE);
                for (int n = 0; n < TOUCHES; n++) {
                    page.touchscreen().tap(40, 40);
                }
                System.out.println("empty page: " + told(page));
            });
        }
    }

    @Test
    void start_fromWhatThePhoneKeeps() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                var phone = new Phone(context, farm.address());
                phone.open("Wren");
                phone.waitUntilKept();
                phone.outOfReach();
                for (int run = 0; run < 7; run++) {
                    phone.kill();
                    var page = context.newPage();
                    slow(context, page);
                    page.navigate(farm.address().resolve("/lamp").toString());
                    page.waitForSelector("#lamp[data-ready=yes]");
                    var ready = page.evaluate("() => performance.getEntriesByName('lamp-ready')[0].startTime");
                    System.out.println("start without signal: " + ready + " ms");
                    page.close();
                    phone.open("Wren");
                }
            });
        }
    }

    private static void slow(BrowserContext context, Page page) {
        var rate = new JsonObject();
        rate.addProperty("rate", SLOWED);
        context.newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate);
    }

    private static String told(Page page) {
        page.waitForTimeout(500);
        @SuppressWarnings("unchecked")
        var took = (List<Number>) page.evaluate("() => window.took.sort((a, b) => a - b)");
        int quick = TOUCHES - took.size();
        return "of " + TOUCHES + " touches, under " + SHORTEST_TOLD_MS + " ms: " + quick + "; 50th centile "
                + centile(took, quick, 50) + ", 99th " + centile(took, quick, 99) + ", longest "
                + centile(took, quick, 100) + " ms";
    }

    private static double centile(List<Number> took, int quick, int centile) {
        int at = (int) Math.ceil(TOUCHES * centile / 100.0) - 1;
        return at < quick
                ? SHORTEST_TOLD_MS
                : took.get(Math.min(at - quick, took.size() - 1)).doubleValue();
    }
}
