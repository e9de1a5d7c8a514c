package eggwright.desk.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * A real browser for tests of pages. Where there is none the tests are passed over with a word that says how to get one;
 * with {@code -Deggwright.browser=required} they fail instead. One driver serves the whole suite.
 */
public final class BrowserStation {
    /** Names another browser than the usual ones. */
    private static final String PATH = "eggwright.browser.path";

    private static final String REQUIRED = "eggwright.browser";
    private static final List<String> USUAL = List.of(
            "/usr/bin/chromium",
            "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome",
            "/usr/bin/google-chrome-stable",
            "/snap/bin/chromium");
    private static final Path PICTURES = Path.of("target", "screenshots");
    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");
    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice");

    private static Optional<Browser> open = Optional.empty();

    /** A screen: a phone held upright, or a desk. */
    public enum Screen {
        PHONE(360, 740),
        DESK(1440, 900);

        private final int width;
        private final int height;

        Screen(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    private BrowserStation() {}

    /** Looks at a page on both screens, light and dark: the accessibility rules, nothing sideways, pictures kept. */
    public static void look(URI address, String name) {
        for (var screen : Screen.values()) {
            for (var scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                var file = name + "-" + screen.width + "-" + scheme.name().toLowerCase(Locale.ROOT);
                with(screen, scheme, page -> {
                    go(page, address);
                    keepPicture(page, file);
                    mustFit(page, file);
                    mustBeReadable(page, file);
                });
            }
        }
    }

    /** A page of its own in a fresh profile; whatever it does wrong in its console fails the test. */
    public static void with(Screen screen, ColorScheme scheme, Consumer<Page> work) {
        with(browser(), screen, scheme, work);
    }

    /** The same in a browser of its own, started with more arguments, as one that finds a name or trusts a certificate. */
    public static void with(List<String> more, Screen screen, ColorScheme scheme, Consumer<Page> work) {
        try (var own = browser()
                .browserType()
                .launch(launching(
                        program().orElseThrow(),
                        Stream.concat(QUIET.stream(), more.stream()).toList()))) {
            with(own, screen, scheme, work);
        }
    }

    /** The same in a browser whose user has a home of his own, and with it a list of authorities that he trusts. */
    public static void withHome(Path home, List<String> more, Screen screen, ColorScheme scheme, Consumer<Page> work) {
        var environment = new java.util.HashMap<>(System.getenv());
        environment.put("HOME", home.toString());
        try (var own = browser()
                .browserType()
                .launch(launching(
                                program().orElseThrow(),
                                Stream.concat(QUIET.stream(), more.stream()).toList())
                        .setEnv(environment))) {
            with(own, screen, scheme, work);
        }
    }

    private static void with(Browser browser, Screen screen, ColorScheme scheme, Consumer<Page> work) {
        var options = new Browser.NewContextOptions()
                .setViewportSize(screen.width, screen.height)
                .setColorScheme(scheme)
                .setDeviceScaleFactor(screen == Screen.PHONE ? 2 : 1);
        try (var context = browser.newContext(options)) {
            var page = context.newPage();
            var said = new ArrayList<String>();
            page.onConsoleMessage(m -> {
                if (m.type().equals("error") && !isOfThePageItself(page, m)) {
                    said.add(m.text());
                }
            });
            page.onPageError(said::add);
            work.accept(page);
            assertEquals(List.of(), said, "what the browser complained of");
        }
    }

    /** A phone with fingers, whose pages share what the phone keeps; nothing is held against its console. */
    public static void withPhone(Consumer<BrowserContext> work) {
        withPhone(options -> {}, work);
    }

    /** The same phone, with something about it otherwise. */
    public static void withPhone(Consumer<Browser.NewContextOptions> otherwise, Consumer<BrowserContext> work) {
        var options = new Browser.NewContextOptions()
                .setViewportSize(Screen.PHONE.width, Screen.PHONE.height)
                .setColorScheme(ColorScheme.LIGHT)
                .setDeviceScaleFactor(2)
                .setHasTouch(true)
                .setIsMobile(true);
        otherwise.accept(options);
        try (var context = browser().newContext(options)) {
            work.accept(context);
        }
    }

    /** A page may be a refusal (404, 422): the test says which it wants. What it loads may not. */
    private static boolean isOfThePageItself(Page page, ConsoleMessage message) {
        return message.text().startsWith("Failed to load resource")
                && message.location().startsWith(page.url() + ":");
    }

    /** Opens an address and waits for its typeface. */
    public static void go(Page page, URI address) {
        page.navigate(address.toString());
        page.evaluate("() => document.fonts.ready.then(() => true)");
    }

    /** Leaves a picture of the whole page in target/screenshots. */
    public static void keepPicture(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(PICTURES.resolve(name + ".png"))
                .setFullPage(true));
    }

    /** Nothing reaches over the side of the screen. */
    public static void mustFit(Page page, String name) {
        var over = page.evaluate("""
                () => document.documentElement.scrollWidth <= window.innerWidth ? '' :
                  [...document.querySelectorAll('body *')]
                    .filter(e => e.getBoundingClientRect().right > window.innerWidth + 1)
                    .slice(0, 5).map(e => e.outerHTML.slice(0, 120)).join('\\n')
                """);
        assertEquals("", over, name + " scrolls sideways");
    }

    /** Holds to WCAG 2.2 AA and the usual good practice, as far as axe-core can tell. */
    public static void mustBeReadable(Page page, String name) {
        var results = new AxeBuilder(page).withTags(RULES).analyze();
        var found = results.getViolations().stream()
                .map(rule -> rule.getId() + ": " + rule.getHelp() + " "
                        + rule.getNodes().stream()
                                .map(n -> n.getHtml() + " " + n.getFailureSummary())
                                .toList())
                .toList();
        assertEquals(List.of(), found, name);
        assertTrue(results.getPasses().size() > 5, name + ": hardly any rule was tried");
    }

    private static synchronized Browser browser() {
        if (open.isEmpty()) {
            var program = program();
            if (program.isEmpty() && "required".equals(System.getProperty(REQUIRED))) {
                throw new AssertionError(howToGetOne());
            }
            Assumptions.assumeTrue(program.isPresent(), BrowserStation::howToGetOne);
            open = Optional.of(start(program.get()));
        }
        return open.get();
    }

    private static Browser start(Path program) {
        var playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        return playwright.chromium().launch(launching(program, QUIET));
    }

    private static BrowserType.LaunchOptions launching(Path program, List<String> arguments) {
        return new BrowserType.LaunchOptions().setExecutablePath(program).setArgs(arguments);
    }

    private static Optional<Path> program() {
        var named = Optional.ofNullable(System.getProperty(PATH)).map(Path::of);
        return named.or(
                () -> USUAL.stream().map(Path::of).filter(Files::isExecutable).findFirst());
    }

    private static String howToGetOne() {
        return "There is no browser on this machine, so the pages were not looked at. Install one (on Debian: apt-get"
                + " install chromium; on Ubuntu: snap install chromium), or name one with -D" + PATH + "=PROGRAM.";
    }
}
