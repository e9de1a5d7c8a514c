package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import eggwright.desk.browser.BrowserStation;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
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
        states((name, page) -> {
            var shot = shot(page);
            assertTrue(mean(shot) <= BUDGET, name + " is too bright: " + mean(shot));
            assertTrue(largestBrightSquare(shot) < SOLID_PX * SCALE, name + " has a bright surface");
            BrowserStation.mustFit(page, name);
            BrowserStation.mustBeReadable(page, name);
            BrowserStation.keepPicture(page, "lamp-" + name);
        });
    }

    /** The measure itself: a white page and a page with one bright key are caught. */
    @Test
    void budget_catchesAWhitePage_andABrightKey() {
        BrowserStation.withPhone(context -> {
            var page = context.newPage();
            page.setContent("<body bgcolor='#ffffff'>");
            assertTrue(mean(shot(page)) > 0.9);
            page.setContent(
                    "<meta name='viewport' content='width=device-width'><body bgcolor='#000000'><div style='width:30px;height:30px;background:#E39A3B'>");
            assertTrue(mean(shot(page)) < BUDGET);
            assertTrue(largestBrightSquare(shot(page)) >= SOLID_PX * SCALE);
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
                assertTrue(mean(shot(page)) <= 0.01, "a flash of " + mean(shot(page)));
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

    /** Shows each state in turn. */
    private static void states(java.util.function.BiConsumer<String, Page> look) {
        try (var farm = LampFarm.open()) {
            BrowserStation.withPhone(context -> {
                var phone = new Phone(context, farm.address());
                var page = context.newPage();
                page.navigate(farm.address().resolve("/lamp").toString());
                page.waitForSelector(".other .field input");
                look.accept("setup", page);
                page.close();
                page = phone.open("Wren");
                look.accept("round", page);
                phone.touch(".view.round [data-key=help]");
                look.accept("what-it-looks-like", page);
                phone.page().locator(".other .away").tap();
                page.waitForSelector(".next");
                phone.touch(".next [data-key^=take]");
                look.accept("tray", page);
                for (var finding : Map.of("clear", 3, "dead", 1).entrySet()) {
                    for (int egg = 0; egg < finding.getValue(); egg++) {
                        phone.key(finding.getKey());
                    }
                }
                look.accept("tray-touched", page);
                phone.key("done");
                look.accept("after", page);
                setUp(phone, "form", "two");
                phone.touch(".next [data-key^=take]");
                phone.key("good");
                phone.key("out");
                look.accept("two-keys", page);
                phone.touch(".view.tray [data-key=away]");
                phone.outOfReach();
                page.waitForSelector(".next");
                look.accept("begun", page);
            });
        }
    }

    private static void setUp(Phone phone, String choice, String value) {
        phone.touch(".view.round [data-key=setup]");
        phone.page().locator("input[name=" + choice + "][value=" + value + "]").check();
        phone.page().locator(".other .away").tap();
        phone.page().waitForSelector(".next");
    }

    private static BufferedImage shot(Page page) {
        try {
            return ImageIO.read(new ByteArrayInputStream(page.screenshot()));
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
