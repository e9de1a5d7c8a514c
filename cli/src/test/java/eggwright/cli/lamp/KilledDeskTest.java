package eggwright.cli.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import eggwright.book.entry.Finding;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Looked;
import eggwright.store.Backups;
import eggwright.store.DataFolder;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The desk's own process is killed outright (SIGKILL: nothing is closed, nothing is written any more) while a phone sends,
 * again and again; each time it is started once more on the same folder and port, and the page sends what it has no answer
 * for. At the end each entry is in the book, once, and the book is whole.
 */
final class KilledDeskTest {
    private static final int TRAYS = 600;
    /** The desk is killed when so many more entries have come than at the last start. */
    private static final List<Integer> KILLED_AFTER = List.of(3, 120, 90);

    @TempDir
    private Path folder;

    private final Path log = Path.of("target", "killed-desk.log");

    @Test
    void book_holdsEachEntryOnce_thoughTheDeskIsKilledWhileAPhoneSends() throws Exception {
        int port = freePort();
        var lamp = URI.create("http://127.0.0.1:" + port + "/lamp").toString();
        var desk = start(port);
        try (var playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")))) {
            var browser = browser(playwright);
            var page = browser.newPage();
            open(page, lamp);
            page.waitForFunction("() => navigator.serviceWorker.ready.then(r => r.active.state === 'activated')");
            page.context().setOffline(true);
            assertEquals(TRAYS, page.evaluate(FILL, modules(page)));
            page.reload();
            page.waitForSelector("#lamp[data-ready=yes]");
            page.context().setOffline(false);

            int killedInTheMidst = 0;
            for (int more : KILLED_AFTER) {
                long until = count() + more;
                page.evaluate("() => dispatchEvent(new Event('online'))");
                while (count() < until) {
                    Thread.onSpinWait();
                }
                desk.destroyForcibly().waitFor();
                long then = count();
                killedInTheMidst += then < TRAYS ? 1 : 0;
                assertEquals(137, desk.exitValue(), "killed, and not asked to stop");
                desk = start(port);
                assertEquals(then, count(), "what was acknowledged or not, nothing is lost by the kill");
            }
            assertEquals(KILLED_AFTER.size(), killedInTheMidst, "the desk was killed after all was sent");

            page.evaluate("() => dispatchEvent(new Event('online'))");
            page.waitForFunction("() => document.querySelector('.desk').textContent.includes('Nothing waits')");
            browser.close();
        } finally {
            desk.destroyForcibly().waitFor();
        }

        try (var store = DataFolder.at(folder).read()) {
            assertTrue(Backups.verify(store).isWhole());
            var found = new TreeMap<Integer, Integer>();
            var looks = store.all().stream().flatMap(KilledDeskTest::look).toList();
            for (var look : looks) {
                found.merge(Integer.valueOf(look.scope().tray().text()), look.seen(Finding.CLEAR), Integer::sum);
            }
            var touched = new TreeMap<Integer, Integer>();
            for (int tray = 1; tray <= TRAYS; tray++) {
                touched.put(tray, tray % 5);
            }
            assertEquals(TRAYS, looks.size(), "each once");
            assertEquals(touched, found);
        }
    }

    /** The desk itself notes the farm's habits when it begins a book. */
    private static Stream<Looked> look(Kept kept) {
        return kept.entry().payload() instanceof Looked look ? Stream.of(look) : Stream.empty();
    }

    /** As many trays as would take a season, through the page's own modules; tray n has n mod 5 clears. */
    private static final String FILL = """
            async ({ shelfUrl, countUrl, trays = %d }) => {
              const { openShelf } = await import(shelfUrl);
              const { Counting } = await import(countUrl);
              const shelf = await openShelf('eggwright-lamp', 'relaxed');
              const round = (await shelf.all()).notes.get('round');
              const counting = await new Counting(shelf, () => Date.now(), 'undone').takeUp();
              for (let n = 1; n <= trays; n++) {
                const load = { set: '14', tray: String(n), eggs: 54, day: 7, pens: [], outAt: null };
                const id = counting.open(load, { farm: round.farm, who: 'Wren', device: round.device });
                for (let egg = 0; egg < n %% 5; egg++) counting.found(id, 'clear');
                counting.done(id);
              }
              await counting.settled();
              return (await shelf.all()).outbox.filter(e => e.state === 'waiting').length;
            }
            """.formatted(TRAYS);

    private static Map<String, String> modules(Page page) {
        @SuppressWarnings("unchecked")
        var names = (List<String>) page.evaluate("""
                async () => {
                  const [name] = (await caches.keys()).filter(n => n.startsWith('lamp-'));
                  return (await (await caches.open(name)).keys()).map(r => new URL(r.url).pathname);
                }
                """);
        return Map.of(
                "shelfUrl", named(names, "lamp-shelf"),
                "countUrl", named(names, "lamp-count"));
    }

    private static String named(List<String> names, String module) {
        return names.stream().filter(n -> n.contains(module)).findFirst().orElseThrow();
    }

    private static void open(Page page, String lamp) {
        page.navigate(lamp);
        page.waitForSelector("#lamp[data-ready=yes]");
        page.locator(".field input").fill("Wren");
        page.locator(".field input").blur();
        page.locator(".other .away").click();
        page.waitForSelector(".nothing");
    }

    private long count() {
        try (var store = DataFolder.at(folder).read()) {
            return store.count();
        }
    }

    /** The desk as a process of its own, open. */
    private Process start(int port) throws IOException, InterruptedException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var started = new ProcessBuilder(
                        java,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "eggwright.cli.Main",
                        "serve",
                        "--data",
                        folder.toString(),
                        "--port",
                        Integer.toString(port))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
                .start();
        for (int tries = 0; tries < 300; tries++) {
            if (!started.isAlive()) {
                throw new AssertionError("The desk did not open: " + Files.readString(log));
            }
            try {
                new Socket(InetAddress.getLoopbackAddress(), port).close();
                return started;
            } catch (IOException notYet) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
        }
        started.destroyForcibly();
        throw new AssertionError("The desk did not open within 30 s: " + Files.readString(log));
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    /** The same browser as for the pages of the desk, by the same two words on the command line. */
    private static Browser browser(Playwright playwright) {
        var program = Optional.ofNullable(System.getProperty("eggwright.browser.path"))
                .map(Path::of)
                .or(() -> Stream.of("/usr/bin/chromium", "/usr/bin/google-chrome", "/snap/bin/chromium")
                        .map(Path::of)
                        .filter(Files::isExecutable)
                        .findFirst());
        if (program.isEmpty() && "required".equals(System.getProperty("eggwright.browser"))) {
            throw new AssertionError("There is no browser on this machine.");
        }
        Assumptions.assumeTrue(program.isPresent(), "There is no browser on this machine, so no phone could send.");
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program.orElseThrow())
                        .setArgs(List.of("--no-sandbox", "--disable-gpu")));
    }
}
