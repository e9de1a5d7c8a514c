package eggwright.cli.calc;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import eggwright.cli.voice.Refused;
import eggwright.sheet.problem.Near;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A file of rows for one calculation: columns named as its inputs, separated by comma, semicolon or tab. Rows are
 * numbered as a spreadsheet shows them, the header being row 1. Read as it goes, so that its length does not matter.
 */
record Rows(Path file, List<Input> inputs) {
    private static final int LONGEST_HEADER = 10_000;

    /** Hands each row over with its number; a row that has not as many cells as the header comes as a refusal. */
    void each(BiConsumer<Long, Row> reader) {
        try (var text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                var csv = CsvReader.builder()
                        .fieldSeparator(separator(text))
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            var records = csv.iterator();
            if (!records.hasNext()) {
                throw refused("is empty. Its first row names the columns: " + names() + ".");
            }
            var columns = columns(records.next());
            long row = 1;
            while (records.hasNext()) {
                row++;
                reader.accept(row, row(columns, records.next()));
            }
        } catch (IOException unread) {
            throw refused(why(unread));
        } catch (UncheckedIOException unread) {
            throw refused(why(unread.getCause()));
        } catch (CsvParseException unread) {
            throw refused("could not be read: " + unread.getMessage() + ".");
        }
    }

    private static String why(@Nullable Throwable unread) {
        return switch (unread) {
            case NoSuchFileException missing -> "is not there. Name a file that is.";
            case CharacterCodingException binary ->
                "is not text in UTF-8. Save it as CSV, UTF-8, then run the command again.";
            case null, default -> "could not be read: " + unread + ".";
        };
    }

    /** What one row gives. */
    sealed interface Row {
        /** Its values. */
        record Read(Given given) implements Row {}

        /** It cannot be read. */
        record Unread(String why) implements Row {}
    }

    private static Row row(List<String> columns, CsvRecord record) {
        if (record.getFieldCount() != columns.size()) {
            return new Row.Unread("This row has " + record.getFieldCount() + " cells where the header has "
                    + columns.size() + ". Give each column a cell; an empty one means not given.");
        }
        var texts = new HashMap<String, String>();
        for (int i = 0; i < columns.size(); i++) {
            texts.put(columns.get(i), record.getField(i));
        }
        return new Row.Read(new Given(Given.Origin.COLUMNS, texts));
    }

    private List<String> columns(CsvRecord header) {
        var known = inputs.stream().map(Input::name).toList();
        var columns = new ArrayList<String>();
        var seen = new HashSet<String>();
        for (var cell : header.getFields()) {
            var name = cell.strip().replace('_', '-');
            if (!known.contains(name)) {
                var near = Near.to(name, known);
                throw refused("has a column \"" + shortened(cell.strip()) + "\" that this calculation does not take."
                        + near.map(n -> " Did you mean \"" + n + "\"?").orElse("") + " It takes: " + names() + ".");
            }
            if (!seen.add(name)) {
                throw refused("has the column \"" + name + "\" twice. Name it once.");
            }
            columns.add(name);
        }
        for (var input : inputs) {
            if (input.need() != Input.Need.OPTIONAL && !seen.contains(input.name())) {
                throw refused("has no column \"" + input.name() + "\", which is needed.");
            }
        }
        return columns;
    }

    private String names() {
        return inputs.stream().map(Input::name).collect(Collectors.joining(", "));
    }

    private Refused refused(String what) {
        return new Refused(file + " " + what + " Nothing was worked out.");
    }

    private static String shortened(String cell) {
        return cell.length() > 40 ? cell.substring(0, 40) + "…" : cell;
    }

    /** The separator that the header uses most; steps over a byte order mark. */
    private static char separator(BufferedReader text) throws IOException {
        text.mark(1);
        if (text.read() != '\uFEFF') {
            text.reset();
        }
        text.mark(LONGEST_HEADER);
        var header = new StringBuilder();
        for (int c = text.read(); c >= 0 && c != '\n' && c != '\r'; c = text.read()) {
            header.append((char) c);
            if (header.length() == LONGEST_HEADER - 1) {
                break;
            }
        }
        text.reset();
        return Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(
                        separator -> header.chars().filter(c -> c == separator).count()))
                .orElseThrow();
    }
}
