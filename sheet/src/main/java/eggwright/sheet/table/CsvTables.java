package eggwright.sheet.table;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import eggwright.sheet.problem.Problem;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads CSV. The separator is whichever of comma, semicolon and tab stands most often in the header. */
final class CsvTables {
    private static final char MARK = '\uFEFF';

    private CsvTables() {}

    static TableRead read(byte[] bytes, String name) {
        for (int i = 0; i < bytes.length; i++) {
            int b = bytes[i];
            if (b >= 0 && b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != '\f') {
                return refused(
                        name, lineOf(bytes, i), "holds bytes that no text has", "Save the table as CSV or XLSX.");
            }
        }
        var decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        var in = ByteBuffer.wrap(bytes);
        var text = CharBuffer.allocate(bytes.length + 1);
        CoderResult end = decoder.decode(in, text, true);
        if (end.isError()) {
            return refused(
                    name,
                    lineOf(bytes, in.position()),
                    "holds a letter that is not written in UTF-8",
                    "Save the table as CSV in UTF-8, or as XLSX.");
        }
        text.flip();
        return parse(text.toString(), name);
    }

    private static TableRead refused(String name, int row, String what, String right) {
        return TableRead.Refused.of(new Problem(name, row, null, null, what, right));
    }

    private static int lineOf(byte[] bytes, int at) {
        int line = 1;
        for (int i = 0; i < at; i++) {
            if (bytes[i] == '\n' || (bytes[i] == '\r' && bytes[i + 1] != '\n')) {
                line++;
            }
        }
        return line;
    }

    private static TableRead parse(String withMark, String name) {
        var text = !withMark.isEmpty() && withMark.charAt(0) == MARK ? withMark.substring(1) : withMark;
        var building = new TableBuilding(name);
        int row = 0;
        try (var csv = CsvReader.builder()
                .fieldSeparator(separator(text))
                .skipEmptyLines(false)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (var record : csv) {
                row++;
                List<Cell> cells = record.getFields().stream()
                        .<Cell>map(field -> new Cell.Text(field.strip()))
                        .toList();
                if (building.add(row, cells) == TableBuilding.Wants.NO_MORE) {
                    break;
                }
            }
        } catch (CsvParseException unread) {
            return refused(
                    name,
                    row + 1,
                    "could not be read as cells: a quotation mark is opened and not closed, or stands in the middle of"
                            + " a cell",
                    "Write a quotation mark inside a cell twice, and the cell in quotation marks.");
        } catch (java.io.IOException impossible) {
            throw new java.io.UncheckedIOException("text in memory", impossible);
        }
        return building.done();
    }

    private static char separator(String text) {
        int commas = 0;
        int semicolons = 0;
        int tabs = 0;
        var quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted) {
                if (c == '\n' || c == '\r') {
                    break;
                }
                commas += c == ',' ? 1 : 0;
                semicolons += c == ';' ? 1 : 0;
                tabs += c == '\t' ? 1 : 0;
            }
        }
        return tabs > commas && tabs >= semicolons ? '\t' : semicolons > commas ? ';' : ',';
    }
}
