package eggwright.sheet.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Writer;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Writes tables as CSV (RFC 4180, comma, lines ended by LF) for any reader and safe for a spreadsheet: a text that a
 * spreadsheet would run as a formula is written with an apostrophe before it, which a spreadsheet shows as text. Numbers
 * stay as they are.
 */
public final class TableWriter {
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)?");

    private TableWriter() {}

    /** The whole table as one text. An empty cell is the empty text. */
    public static String csv(List<String> header, List<List<String>> rows) {
        var text = new java.io.StringWriter();
        csv(header, rows, text);
        return text.toString();
    }

    /** Writes to {@code out}, which is left open. UTF-8 is the caller's to choose. */
    public static void csv(List<String> header, Iterable<List<String>> rows, Writer out) {
        // Not closed: that would close the writer of the caller. Nothing is buffered beyond each record's own flush.
        @SuppressWarnings("resource")
        var csv = CsvWriter.builder()
                .lineDelimiter(LineDelimiter.LF)
                .bufferSize(0)
                .build(out);
        csv.writeRecord(safe(header));
        for (var row : rows) {
            csv.writeRecord(safe(row));
        }
    }

    private static List<String> safe(List<String> cells) {
        return cells.stream().map(TableWriter::safe).toList();
    }

    /** The text so that no spreadsheet runs it. */
    static String safe(String text) {
        if (text.isEmpty() || NUMBER.matcher(text).matches()) {
            return text;
        }
        return switch (text.charAt(0)) {
            case '=', '+', '-', '@', '\t', '\r', '\n' -> "'" + text;
            default -> text;
        };
    }
}
