package eggwright.desk.lamp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A thousand random sequences of touches, undos, cuts, kills, reloads and sends: the page's own modules, on a real
 * browser's own storage, against the real desk. What is in the book at the end is exactly what was touched.
 */
final class LampSequencesTest {
    private static final int SEQUENCES = 1000;
    private static final int SEED = 20270412;
    /** So many a call: a call that takes long would look like one that hangs. */
    private static final int AT_ONCE = 100;

    /** So few are enough to catch each of the planted breaches. */
    private static final int SEQUENCES_WITH_A_BREACH = 100;

    @Test
    void book_holdsExactlyWhatWasTouched_whateverHappenedToThePhone() {
        var run = run(SEQUENCES, "none");
        assertEquals(SEQUENCES, run.touched());
        assertTrue(run.kills() > SEQUENCES, "hardly a phone was killed: " + run.kills());
        assertTrue(run.sends() > SEQUENCES, "hardly anything was sent: " + run.sends());
        assertEquals(0, run.left(), "entries still on a phone that had reached the desk");
        assertEquals(run.expected(), run.found());
    }

    /** The comparison itself: whoever loses, makes up or doubles a count is caught by it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "keptWithoutPosting",
                "touchNotWritten",
                "undoneWithoutAWord",
                "sentTwiceUnderTwoNames",
                "entryForgotten"
            })
    void comparison_catchesALiar(String breach) {
        var run = run(SEQUENCES_WITH_A_BREACH, breach);
        assertEquals(SEQUENCES_WITH_A_BREACH, run.touched());
        assertNotEquals(run.expected(), run.found(), breach);
    }

    /**
     * @param touched phones of which something is to be expected
     * @param expected by the model, by who touched it
     * @param found in the book at the end
     * @param left entries still on a phone that had reached the desk
     */
    private record Sequences(
            int touched,
            Map<String, List<String>> expected,
            Map<String, List<String>> found,
            int kills,
            int sends,
            int left) {}

    private static Sequences run(int sequences, String breach) {
        try (var farm = LampFarm.open()) {
            // As they are before any is counted: a thousand counts empty them.
            var trays = farm.trays();
            var expected = new TreeMap<String, List<String>>();
            var sums = new TreeMap<String, Integer>();
            BrowserStation.with(Screen.PHONE, ColorScheme.LIGHT, page -> {
                page.navigate(farm.address().resolve("/settings").toString());
                for (int first = 0; first < sequences; first += AT_ONCE) {
                    @SuppressWarnings("unchecked")
                    var run = (Map<String, Object>) page.evaluate(script(), question(farm, trays, first, breach));
                    @SuppressWarnings("unchecked")
                    var looks = (Map<String, List<String>>) run.get("expected");
                    expected.putAll(Objects.requireNonNull(looks));
                    for (var sum : List.of("kills", "sends", "lost")) {
                        sums.merge(sum, (int) Objects.requireNonNull(run.get(sum)), Integer::sum);
                    }
                }
            });
            return new Sequences(
                    expected.size(),
                    withoutEmpty(expected),
                    inTheBook(farm),
                    sums.getOrDefault("kills", 0),
                    sums.getOrDefault("sends", 0),
                    sums.getOrDefault("lost", 0));
        }
    }

    private static Map<String, Object> question(LampFarm farm, List<LoadRef> loads, int first, String breach) {
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
                        "outbox", assets.url("js/lamp-outbox.js"),
                        "ids", assets.url("js/lamp-ids.js")),
                "breach",
                breach,
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
