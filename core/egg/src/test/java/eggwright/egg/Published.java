package eggwright.egg;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** One row of a published or independently computed table, as it lies beside the tests (RFC 4180; # begins a remark). */
public record Published(Map<String, String> cells) {
    /** The rows of a table. */
    public static Stream<Published> rows(String name) {
        try (var stream = Published.class.getResourceAsStream(name + ".csv")) {
            if (stream == null) {
                throw new IllegalStateException("No table " + name);
            }
            var lines = new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(Published::cells)
                    .toList();
            var header = lines.getFirst();
            return lines.stream().skip(1).map(line -> row(header, line));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of one kind, which have a number in each of these columns. */
    public static Stream<Published> rows(String name, String kind, String... filled) {
        return rows(name)
                .filter(row -> row.text("row_kind").equals(kind))
                .filter(row ->
                        Stream.of(filled).noneMatch(column -> row.text(column).isEmpty()));
    }

    public String text(String column) {
        var cell = cells.get(column);
        if (cell == null) {
            throw new IllegalStateException("No column " + column + " in " + cells.keySet());
        }
        return cell;
    }

    public double number(String column) {
        return Double.parseDouble(text(column));
    }

    /** The row's name, for messages. */
    public String id() {
        return text("id");
    }

    private static Published row(List<String> header, List<String> line) {
        if (line.size() != header.size()) {
            throw new IllegalStateException(line.size() + " cells for " + header.size() + " columns: " + line);
        }
        var cells = new LinkedHashMap<String, String>();
        for (int i = 0; i < header.size(); i++) {
            cells.put(header.get(i), line.get(i));
        }
        return new Published(cells);
    }

    private static List<String> cells(String line) {
        var cells = new ArrayList<String>();
        var cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
