package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import eggwright.desk.browser.BrowserStation;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/**
 * Every state of the lamp page keeps its budget of light, and can be read by all.
 *
 * <p>Relative luminance after WCAG 2.2 (W3C Recommendation, definition "relative luminance"). Budget in
 * {@code docs/models/lamp-light.md}: the mean over the screen at most 0.05, and no area brighter than that into which a
 * square of {@value #SOLID_PX} CSS pixels fits: a stroke of a large figure is bright, a surface never is.
 */
final class LampLightTest {
    private static final double BUDGET = 0.05;
    private static final int SOLID_PX = 20;
    private static final int SCALE = 2;

    @Test
    void states_keepTheirBudgetOfLight_andCanBeReadByAll() {
        var seen = new ArrayList<String>();
        var wrong = new ArrayList<String>();
        LampStates.show((name, page) -> {
            seen.add(name);
            BrowserStation.keepPicture(page, "lamp-" + name);
            try {
                look(name, page);
            } catch (AssertionError amiss) {
                wrong.add(name + ": " + amiss.getMessage());
            }
        });
        assertEquals(LampStates.NAMES, seen);
        assertEquals(List.of(), wrong);
    }

    private static void look(String name, Page page) {
        assertTrue(mean(shot(page, false)) <= BUDGET, name + " is too bright: " + mean(shot(page, false)));
        assertTrue(largestBrightSquare(shot(page, true)) < SOLID_PX * SCALE, name + " has a bright surface");
        BrowserStation.mustFit(page, name);
        if (!name.equals(LampStates.WITHOUT_SCRIPT)) {
            // The rules are scripts themselves.
            BrowserStation.mustBeReadable(page, name);
        }
        mustBeInReach(page, name);
    }

    /** The rules are scripts and cannot look where none runs: they look at what a browser shows there, drawn as if it ran none. */
    @Test
    void pageWithoutScript_canBeReadByAll() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                var page = context.newPage();
                page.route("**/lamp", route -> {
                    var answer = route.fetch();
                    route.fulfill(new com.microsoft.playwright.Route.FulfillOptions()
                            .setResponse(answer)
                            .setBody(answer.text()
                                    .replaceAll("<script[^>]*></script>", "")
                                    .replace("noscript>", "div>")));
                });
                page.navigate(farm.address().resolve("/lamp").toString());
                assertTrue(page.locator("#lamp a").isVisible());
                BrowserStation.mustBeReadable(page, LampStates.WITHOUT_SCRIPT);
            });
        }
    }

    /** A tray takes no swipe, so every key of it has to be on the screen, also on a small one with the browser's bars. */
    private static void mustBeInReach(Page page, String name) {
        if (!page.locator(".view.tray").isVisible()) {
            return;
        }
        for (int height : new int[] {740, 600}) {
            page.setViewportSize(360, height);
            for (var key :
                    page.locator(".view.tray .keys .key, .view.tray .ends .key").all()) {
                var box = key.boundingBox();
                assertTrue(box.y >= 0 && box.y + box.height <= height, name + ", " + height + " px: " + key);
            }
        }
        page.setViewportSize(360, 740);
    }

    /** The measure itself: a white page and a page with one bright key are caught. */
    @Test
    void budget_catchesAWhitePage_andABrightKey() {
        BrowserStation.withPhone(context -> {
            var page = context.newPage();
            page.setContent("<body bgcolor='#ffffff'>");
            assertTrue(mean(shot(page, false)) > 0.9);
            page.setContent(
                    "<meta name='viewport' content='width=device-width'><body bgcolor='#000000'><div style='width:30px;height:30px;background:#E39A3B'>");
            assertTrue(mean(shot(page, false)) < BUDGET);
            assertTrue(largestBrightSquare(shot(page, false)) >= SOLID_PX * SCALE);
        });
    }

    /** On a reload the page is black before any style sheet has come, and stays so if none comes. */
    @Test
    void page_isBlack_beforeItsStyleHasCome() {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                context.route("**/*.css", route -> route.abort());
                context.route("**/*.js", route -> route.abort());
                var page = context.newPage();
                page.navigate(farm.address().resolve("/lamp").toString());
                assertTrue(mean(shot(page, false)) <= 0.01, "a flash of " + mean(shot(page, false)));
                assertEquals("rgb(0, 0, 0)", page.evaluate("() => getComputedStyle(document.body).backgroundColor"));
            });
        }
    }

    /** What it takes to lay the page on a phone: at most 120 kB, packed as the desk sends it. */
    @Test
    void everythingThePageNeeds_isAtMost120Kilobytes() throws IOException {
        try (var farm = LampFarm.open()) {
            var sizes = new LinkedHashMap<String, Integer>();
            var worker = get(farm, "/lamp-worker.js");
            sizes.put("/lamp-worker.js", packed(worker));
            var names = java.util.regex.Pattern.compile("\"(/[^\"]+)\"")
                    .matcher(new String(worker, java.nio.charset.StandardCharsets.UTF_8));
            while (names.find()) {
                sizes.put(names.group(1), packed(get(farm, names.group(1))));
            }
            assertTrue(sizes.size() > 15, sizes.keySet().toString());
            int sum = sizes.values().stream().mapToInt(Integer::intValue).sum();
            assertTrue(sum <= 120_000, sum + " bytes: " + sizes);
        }
    }

    private static byte[] get(LampFarm farm, String path) throws IOException {
        try (var in = farm.address().resolve(path).toURL().openStream()) {
            return in.readAllBytes();
        }
    }

    private static int packed(byte[] bytes) throws IOException {
        var out = new java.io.ByteArrayOutputStream();
        try (var gzip = new java.util.zip.GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return Math.min(bytes.length, out.size());
    }

    private static BufferedImage shot(Page page, boolean isWhole) {
        try {
            return ImageIO.read(
                    new ByteArrayInputStream(page.screenshot(new Page.ScreenshotOptions().setFullPage(isWhole))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double mean(BufferedImage shot) {
        double sum = 0;
        for (int y = 0; y < shot.getHeight(); y++) {
            for (int x = 0; x < shot.getWidth(); x++) {
                sum += luminance(shot.getRGB(x, y));
            }
        }
        return sum / ((double) shot.getHeight() * shot.getWidth());
    }

    /** Side of the largest square all of whose pixels are over the budget. */
    private static int largestBrightSquare(BufferedImage shot) {
        var above = new int[shot.getWidth() + 1];
        int largest = 0;
        for (int y = 0; y < shot.getHeight(); y++) {
            int corner = 0;
            for (int x = 1; x <= shot.getWidth(); x++) {
                int was = above[x];
                above[x] = luminance(shot.getRGB(x - 1, y)) > BUDGET
                        ? 1 + Math.min(corner, Math.min(above[x], above[x - 1]))
                        : 0;
                corner = was;
                largest = Math.max(largest, above[x]);
            }
        }
        return largest;
    }

    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
