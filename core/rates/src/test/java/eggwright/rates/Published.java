package eggwright.rates;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A published table, as it lies beside the tests; its first line names the source. */
final class Published {
    private Published() {}

    static List<Map<String, String>> rows(String name) {
        var stream = Objects.requireNonNull(Published.class.getResourceAsStream(name + ".csv"), name);
        try (stream) {
            var lines = new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.startsWith("#"))
                    .toList();
            var header = lines.getFirst().split(",", -1);
            var rows = new ArrayList<Map<String, String>>();
            for (var line : lines.subList(1, lines.size())) {
                var cells = line.split(",", -1);
                var row = new HashMap<String, String>();
                for (int i = 0; i < header.length; i++) {
                    row.put(header[i], cells[i]);
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static int count(Map<String, String> row, String column) {
        return Integer.parseInt(text(row, column));
    }

    static double number(Map<String, String> row, String column) {
        return Double.parseDouble(text(row, column));
    }

    static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }
}
