package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.fold.Ledger;
import eggwright.book.picture.LoadRef;
import eggwright.desk.assets.Assets;
import eggwright.desk.browser.BrowserStation;
import eggwright.desk.browser.BrowserStation.Screen;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * A thousand random sequences of touches, undos, cuts, kills, reloads and sends: the page's own modules, on a real
 * browser's own storage, against the real desk. What is in the book at the end is exactly what was touched.
 */
final class LampSequencesTest {
    private static final int SEQUENCES = 1000;
    private static final int SEED = 20270412;
    /** So many a call: a call that takes long would look like one that hangs. */
    private static final int AT_ONCE = 100;

    @Test
    void book_holdsExactlyWhatWasTouched_whateverHappenedToThePhone() {
        try (var farm = LampFarm.open()) {
            // As they are before any is counted: a thousand counts empty them.
            var trays = farm.trays();
            BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
                page.navigate(farm.address().resolve("/settings").toString());
                var expected = new TreeMap<String, List<String>>();
                int kills = 0;
                int sends = 0;
                for (int first = 0; first < SEQUENCES; first += AT_ONCE) {
                    @SuppressWarnings("unchecked")
                    var run = (Map<String, Object>) page.evaluate(script(), question(farm, trays, first));
                    @SuppressWarnings("unchecked")
                    var looks = (Map<String, List<String>>) run.get("expected");
                    expected.putAll(Objects.requireNonNull(looks));
                    kills += (int) Objects.requireNonNull(run.get("kills"));
                    sends += (int) Objects.requireNonNull(run.get("sends"));
                    assertEquals(0, run.get("lost"), "entries still on a phone that had reached the desk");
                }
                assertEquals(SEQUENCES, expected.size());
                assertTrue(kills > SEQUENCES, "hardly a phone was killed: " + kills);
                assertTrue(sends > SEQUENCES, "hardly anything was sent: " + sends);
                assertEquals(withoutEmpty(expected), inTheBook(farm));
            });
        }
    }

    private static Map<String, Object> question(LampFarm farm, List<LoadRef> loads, int first) {
        var assets = new Assets();
        var trays = loads.stream()
                .map(load -> Map.<String, Object>of(
                        "set", load.set().text(), "tray", load.tray().text(), "eggs", 54, "day", 8))
                .toList();
        return Map.of(
                "urls",
                Map.of(
                        "shelf", assets.url("js/lamp-shelf.js"),
                        "count", assets.url("js/lamp-count.js"),
                        "outbox", assets.url("js/lamp-outbox.js")),
                "seed",
                SEED,
                "first",
                first,
                "count",
                AT_ONCE,
                "farm",
                farm.name(),
                "device",
                "desk",
                "trays",
                trays);
    }

    private static Map<String, List<String>> withoutEmpty(Map<String, List<String>> expected) {
        return expected.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> a, TreeMap::new));
    }

    /** What counts in the book at the end, mends taken in, by who touched it. */
    private static Map<String, List<String>> inTheBook(LampFarm farm) {
        var found = new TreeMap<String, List<String>>();
        for (var entry : Ledger.of(farm.kept()).inOrder()) {
            var who = entry.entry().who().text();
            if (who.startsWith("walk ") && entry.payload() instanceof Looked look) {
                found.computeIfAbsent(who, w -> new ArrayList<>()).add(words(look));
            }
        }
        found.values().forEach(l -> l.sort(null));
        return found;
    }

    private static String words(Looked look) {
        var words = new ArrayList<String>(List.of(
                String.valueOf(look.scope().set()), String.valueOf(look.scope().tray()), "seen"));
        for (var finding : List.of(
                Finding.CLEAR,
                Finding.BLOOD_RING,
                Finding.DEAD,
                Finding.DOUBTFUL,
                Finding.CRACKED,
                Finding.ROT,
                Finding.WRONG_END_UP)) {
            look.findings().stream()
                    .filter(f -> f.finding() == finding)
                    .map(LampSequencesTest::words)
                    .forEach(words::add);
        }
        words.add("unsorted " + look.removedUnsorted());
        words.add("looked " + (look.lookedAt() == null ? "all" : look.lookedAt()));
        words.add("counted " + (look.countedBefore() == null ? "no" : look.countedBefore()));
        words.add("places");
        look.places().forEach(p -> words.add(p.place() + ":" + p.finding().word()));
        return String.join(" ", words);
    }

    private static String words(FindingCount count) {
        return count.finding().word() + " " + count.seen() + "-" + count.removed() + "-" + count.keptToOpen();
    }

    private static String script() {
        try (var in = LampSequencesTest.class.getResourceAsStream("sequences.js")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
