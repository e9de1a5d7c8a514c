package eggwright.trade.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A small table that lies inside the program as comma-separated text (RFC 4180, header first, quotes doubled).
 *
 * <p>Only for tables that ship with the program: a fault in one is a fault of ours, so it throws.
 */
public record CsvTable(List<Map<String, String>> rows) {
    public CsvTable {
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table that lies beside a class.
     *
     * @throws IllegalStateException if the program was packed without it
     */
    public static CsvTable beside(Class<?> owner, String name) {
        try (var stream = owner.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("The table " + name + " is missing from this program");
            }
            return of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads the text of a table. Rows keep only the cells that hold something, in the order of the header. */
    public static CsvTable of(String text) {
        var lines = records(text);
        var header = lines.getFirst();
        var rows = new ArrayList<Map<String, String>>(lines.size());
        for (var line : lines.subList(1, lines.size())) {
            if (line.size() != header.size()) {
                throw new IllegalStateException("Row " + (rows.size() + 2) + " has " + line.size() + " cells, not "
                        + header.size() + ": " + line);
            }
            var row = new LinkedHashMap<String, String>();
            for (int i = 0; i < header.size(); i++) {
                if (!line.get(i).isEmpty()) {
                    row.put(header.get(i), line.get(i));
                }
            }
            rows.add(java.util.Collections.unmodifiableMap(row));
        }
        return new CsvTable(rows);
    }

    private static List<List<String>> records(String text) {
        var records = new ArrayList<List<String>>();
        var record = new ArrayList<String>();
        var cell = new StringBuilder();
        var state = State.PLAIN;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (state == State.QUOTED) {
                if (c != '"') {
                    cell.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append(c);
                    i++;
                } else {
                    state = State.PLAIN;
                }
            } else if (c == '"') {
                state = State.QUOTED;
            } else if (c == ',' || c == '\n') {
                record.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    records.add(List.copyOf(record));
                    record.clear();
                }
            } else if (c != '\r') {
                cell.append(c);
            }
        }
        if (!record.isEmpty() || !cell.isEmpty()) {
            record.add(cell.toString());
            records.add(List.copyOf(record));
        }
        return records;
    }

    private enum State {
        PLAIN,
        QUOTED
    }
}
