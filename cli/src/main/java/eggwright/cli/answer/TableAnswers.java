package eggwright.cli.answer;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Writes answers for people: one answer as a list of names and values, many as a table. */
public final class TableAnswers {
    /** Wide enough for six figures with sign and point, so that a table can be written before its end is known. */
    private static final int NARROWEST = 12;

    private TableAnswers() {}

    /** One answer, a line for each value; of a list of groups each has a line of its own. */
    public static void write(PrintWriter out, Answer answer) {
        int width = answer.fields().stream()
                .mapToInt(field -> field.key().length())
                .max()
                .orElse(0);
        for (var field : answer.fields()) {
            var key = field.key().replace('_', ' ');
            for (var line : lines(field.value())) {
                out.println(padded(key, width) + "  " + line);
                key = "";
            }
        }
    }

    private static List<String> lines(Value value) {
        return value instanceof Value.Many(List<Value> values)
                        && values.stream().anyMatch(each -> each instanceof Value.Group)
                ? values.stream().map(Shown::text).toList()
                : List.of(Shown.text(value));
    }

    /** The headings of a table. */
    public static void heading(PrintWriter out, List<String> keys) {
        line(out, keys.stream().map(key -> key.replace('_', ' ')).toList(), keys);
    }

    /** One line under these headings. */
    public static void line(PrintWriter out, List<String> cells, List<String> keys) {
        out.println(IntStream.range(0, cells.size())
                .mapToObj(i -> padded(
                        cells.get(i),
                        Math.max(NARROWEST, i < keys.size() ? keys.get(i).length() : 0)))
                .collect(Collectors.joining("  "))
                .stripTrailing());
    }

    /** A whole table, each column as wide as its widest cell; an empty cell stays empty. */
    public static void table(PrintWriter out, List<String> headings, List<List<String>> rows) {
        var lines = Stream.concat(Stream.of(headings), rows.stream()).toList();
        var widths = IntStream.range(0, headings.size())
                .map(i -> lines.stream()
                        .mapToInt(line -> line.get(i).length())
                        .max()
                        .orElse(0))
                .toArray();
        for (var line : lines) {
            out.println(IntStream.range(0, widths.length)
                    .mapToObj(i -> padded(line.get(i), widths[i]))
                    .collect(Collectors.joining("  "))
                    .stripTrailing());
        }
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
