package eggwright.egg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A table of a page in docs that shows ours beside the published: the page is kept equal to what is computed. When a value
 * moves, find out why; then run with {@code -Deggwright.keep=write} and look at the difference.
 */
public final class KeptTable {
    private static final Path MODELS = Path.of("..", "..", "docs", "models");

    private final List<String> lines = new ArrayList<>();

    /** A table with these headings. */
    public KeptTable(String... headings) {
        add(headings);
        lines.add("|" + "---|".repeat(headings.length));
    }

    /** One more row. */
    public void add(String... cells) {
        lines.add(Stream.of(cells).collect(Collectors.joining(" | ", "| ", " |")));
    }

    /** A number as the page shows it. */
    public static String shown(int decimals, double number) {
        var text = String.format(Locale.ROOT, "%." + decimals + "f", number);
        // "-0.00" and "0.00" are the same difference.
        return Double.parseDouble(text) == 0 ? text.replace("-", "") : text;
    }

    /** A difference with its sign. */
    public static String signed(int decimals, double number) {
        var text = shown(decimals, number);
        return number > 0 && Double.parseDouble(text) != 0 ? "+" + text : text;
    }

    /** Holds the part of the page between the marks of this name against this table. */
    public void isOn(String page, String name) {
        var file = MODELS.resolve(page);
        var begin = "<!-- table " + name + " -->\n";
        var end = "<!-- end -->";
        try {
            var text = Files.readString(file);
            int from = text.indexOf(begin);
            if (from < 0) {
                throw new AssertionError(page + " has no table " + name);
            }
            from += begin.length();
            int to = text.indexOf(end, from);
            var table = String.join("\n", lines) + "\n";
            if ("write".equals(System.getProperty("eggwright.keep"))) {
                Files.writeString(file, text.substring(0, from) + table + text.substring(to));
            } else {
                assertEquals(text.substring(from, to), table, page + ", table " + name);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
