package eggwright.stats;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A table of questions or kept answers, as it lies beside the tests. */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** One row, read by column name. */
    public record Row(Map<String, String> cells) {
        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), () -> "no column " + column);
        }

        public long count(String column) {
            return Long.parseLong(text(column));
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        public boolean has(String column) {
            return !text(column).isEmpty();
        }
    }

    public static List<Row> read(String name) {
        var stream = Objects.requireNonNull(ReferenceTable.class.getResourceAsStream(name), name);
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            var header = cells(Objects.requireNonNull(reader.readLine()));
            var rows = new ArrayList<Row>();
            String line;
            while ((line = reader.readLine()) != null) {
                var cells = cells(line);
                var row = new HashMap<String, String>();
                for (int i = 0; i < header.size(); i++) {
                    row.put(header.get(i), cells.get(i));
                }
                rows.add(new Row(row));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<Row> ofCase(List<Row> rows, String caseId) {
        return rows.stream().filter(r -> r.text("case_id").equals(caseId)).toList();
    }

    /** The answer named {@code quantity} of a case. */
    public static Row answer(List<Row> rows, String caseId, String quantity) {
        return rows.stream()
                .filter(r ->
                        r.text("case_id").equals(caseId) && r.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + quantity + " for " + caseId));
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
