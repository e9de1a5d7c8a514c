package eggwright.desk.assets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The colours against WCAG 2.2 (W3C Recommendation): relative luminance and contrast ratio as defined there, at least
 * 4.5 for text (1.4.3) and 3 for the edges of controls (1.4.11).
 */
final class TokensTest {
    private static final Path TOKENS = Path.of("src/main/resources/eggwright/desk/assets/css/tokens.css");
    private static final Pattern BLOCK = Pattern.compile("(:root(?:\\[data-look=\"\\w+\"])?) \\{([^}]*)}");
    private static final Pattern COLOUR = Pattern.compile("--(\\w+): (#[0-9A-F]{6});(?: /\\* ([\\d.]+))?");
    /** The comments give one digit after the point. */
    private static final double PRINTED = 0.05;

    @Test
    void every_ink_hasTheContrastWrittenBesideIt() throws IOException {
        for (var block : blocks().entrySet()) {
            var ground = one(colours(block.getValue()), "ground");
            var match = COLOUR.matcher(block.getValue());
            while (match.find()) {
                if (match.group(3) != null) {
                    var contrast = contrast(match.group(2), ground);
                    assertEquals(
                            Double.parseDouble(match.group(3)),
                            contrast,
                            PRINTED + 1e-9,
                            block.getKey() + " " + match.group(1));
                    assertTrue(contrast >= 4.5, match.group());
                }
            }
        }
    }

    @Test
    void every_ink_canBeReadOnASheetToo() throws IOException {
        for (var block : blocks().entrySet()) {
            var colours = colours(block.getValue());
            for (var ink : List.of("ink", "quiet", "olive", "shell", "amber", "blood")) {
                if (colours.containsKey(ink) && !block.getKey().contains("lamp")) {
                    assertTrue(contrast(one(colours, ink), one(colours, "sheet")) >= 4.5, block.getKey() + " " + ink);
                }
            }
        }
    }

    @Test
    void dusk_isTheSame_whetherTheSystemOrTheBrowserAskedForIt() throws IOException {
        var blocks = blocks();

        assertEquals(
                colours(one(blocks, ":root[data-look=\"dusk\"]")), colours(one(blocks, ":root[data-look=\"system\"]")));
    }

    @Test
    void lamp_staysDark() throws IOException {
        var lamp = colours(one(blocks(), ":root[data-look=\"lamp\"]"));

        assertTrue(luminance(one(lamp, "ground")) <= 0.05);
        assertTrue(luminance(one(lamp, "sheet")) <= 0.05);
    }

    private static Map<String, String> blocks() throws IOException {
        var found = new HashMap<String, String>();
        var match = BLOCK.matcher(Files.readString(TOKENS).replaceAll("(?s)@media print.*", ""));
        while (match.find()) {
            found.put(match.group(1), match.group(2));
        }
        assertEquals(4, found.size());
        return found;
    }

    private static Map<String, String> colours(String block) {
        var found = new HashMap<String, String>();
        COLOUR.matcher(block).results().forEach(m -> found.put(m.group(1), m.group(2)));
        return found;
    }

    private static String one(Map<String, String> all, String name) {
        return Objects.requireNonNull(all.get(name), name);
    }

    private static double contrast(String a, String b) {
        var light = Math.max(luminance(a), luminance(b));
        var dark = Math.min(luminance(a), luminance(b));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * linear(hex, 1) + 0.7152 * linear(hex, 3) + 0.0722 * linear(hex, 5);
    }

    private static double linear(String hex, int at) {
        var share = Integer.parseInt(hex.substring(at, at + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
