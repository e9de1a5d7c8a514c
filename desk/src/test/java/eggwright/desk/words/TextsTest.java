package eggwright.desk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.Look;
import eggwright.desk.Place;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text of the pages stands in a bundle, and every text that is asked for is there. */
final class TextsTest {
    private static final Path TEMPLATES = Path.of("src/main/jte");
    private static final Path JAVA = Path.of("src/main/java");
    private static final Path BUNDLES = Path.of("src/main/resources");
    private static final Pattern OF_THE_FRAME = Pattern.compile("\\bframe\\.say\\(\\s*\"([^\"]+)\"\\s*[,)]");
    private static final Pattern OF_THE_FEATURE =
            Pattern.compile("\\bwords(?:\\(\\))?\\.say\\(\\s*\"([^\"]+)\"\\s*[,)]");
    private static final Pattern PAGE = Pattern.compile("@param (\\w+) page\\b");

    @Test
    void templates_holdNoBareWords() throws IOException {
        for (var file : files(TEMPLATES, ".jte")) {
            assertEquals(List.of(), Template.bareWords(Files.readString(file)), file.toString());
        }
    }

    @Test
    void bareWords_areFound_whereverTheyHide() {
        assertEquals(List.of("Sets"), Template.bareWords("<h1>Sets</h1>"));
        assertEquals(List.of("eggs"), Template.bareWords("@param long n\n<td>${n} eggs</td>"));
        assertEquals(
                List.of("Hidden"),
                Template.bareWords("@template.layout.frame(title = \"x\", content = @`<p>Hidden</p>`)"));
        assertEquals(List.of("Places"), Template.bareWords("<nav aria-label=\"Places\">"));
        assertEquals(List.of("yes"), Template.bareWords("@if(a.equals(\")\"))yes@endif"));
        assertEquals(List.of(), Template.bareWords("<p class=\"lead\">${words.say(\"a\", b > 1)} · &nbsp;54</p>"));
    }

    @Test
    void texts_thatAreAskedFor_areThere() throws IOException {
        var frame = keys("eggwright/desk");
        var missing = new TreeSet<String>();
        for (var file : files(TEMPLATES, ".jte")) {
            var text = Files.readString(file);
            asked(OF_THE_FRAME, text).filter(k -> !frame.contains(k)).forEach(k -> missing.add(file + " " + k));
            var own = asked(OF_THE_FEATURE, text).toList();
            if (!own.isEmpty()) {
                var bundle = keys(packageOfPage(file, text));
                own.stream().filter(k -> !bundle.contains(k)).forEach(k -> missing.add(file + " " + k));
            }
        }
        for (var file : files(JAVA, ".java")) {
            var own = asked(OF_THE_FEATURE, Files.readString(file)).toList();
            if (!own.isEmpty()) {
                var bundle = keys(JAVA.relativize(file.getParent()).toString());
                own.stream().filter(k -> !bundle.contains(k)).forEach(k -> missing.add(file + " " + k));
            }
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void places_andLooks_haveTheirNames() throws IOException {
        var frame = keys("eggwright/desk");

        Place.LISTED.forEach(place -> assertTrue(frame.contains("place." + place), place.toString()));
        for (var look : Look.values()) {
            assertTrue(frame.contains("look." + look), look.toString());
        }
    }

    @Test
    void texts_useNoStraightQuote_forItWouldVanish() throws IOException {
        for (var file : files(BUNDLES, ".properties")) {
            var texts = read(file);
            for (var key : texts.stringPropertyNames()) {
                assertTrue(texts.getProperty(key).indexOf('\'') < 0, file + " " + key);
            }
        }
    }

    @Test
    void otherLanguages_haveEveryText_andNoOther() throws IOException {
        for (var file : files(BUNDLES, ".properties")) {
            if (!file.endsWith("messages.properties")) {
                var base = read(file.resolveSibling("messages.properties")).stringPropertyNames();
                assertEquals(base, read(file).stringPropertyNames(), file.toString());
            }
        }
    }

    private static Stream<String> asked(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(m -> m.group(1));
    }

    private static String packageOfPage(Path file, String text) {
        var page = PAGE.matcher(text);
        assertTrue(page.find(), file + " uses words but has no page");
        var imported =
                Pattern.compile("@import (\\S+)\\." + page.group(1) + "\\b").matcher(text);
        assertTrue(imported.find(), file + " does not import " + page.group(1));
        return imported.group(1).replace('.', '/');
    }

    private static Set<String> keys(String packagePath) throws IOException {
        return read(BUNDLES.resolve(packagePath).resolve("messages.properties")).stringPropertyNames();
    }

    private static Properties read(Path file) throws IOException {
        var texts = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            texts.load(in);
        }
        return texts;
    }

    private static List<Path> files(Path root, String ending) throws IOException {
        try (var all = Files.walk(root)) {
            return all.filter(f -> f.toString().endsWith(ending)).sorted().toList();
        }
    }
}
