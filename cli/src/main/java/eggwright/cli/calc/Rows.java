package eggwright.cli.calc;

import de.siegmar.fastcsv.reader.CsvRecord;
import eggwright.cli.csv.CsvFile;
import eggwright.cli.voice.Refused;
import eggwright.sheet.problem.Near;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

/**
 * A file of rows for one calculation: columns named as its inputs, separated by comma, semicolon or tab. Rows are
 * numbered as a spreadsheet shows them, the header being row 1. Read as it goes, so that its length does not matter.
 */
record Rows(Path file, List<Input> inputs) {
    /** Hands each row over with its number; a row that has not as many cells as the header comes as a refusal. */
    void each(BiConsumer<Long, Row> reader) {
        new CsvFile(file).read(records -> {
            if (!records.hasNext()) {
                throw refused("is empty. Its first row names the columns: " + names() + ".");
            }
            var columns = columns(records.next());
            long row = 1;
            while (records.hasNext()) {
                row++;
                reader.accept(row, row(columns, records.next()));
            }
        });
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
                throw refused("has a column \"" + CsvFile.shortened(cell.strip())
                        + "\" that this calculation does not take."
                        + near.map(n -> " Did you mean \"" + n + "\"?").orElse("") + " It takes: " + names() + ".");
            }
            if (!seen.add(name)) {
                throw refused("has the column \"" + name + "\" twice. Name it once.");
            }
            columns.add(name);
        }
        for (var input : inputs) {
            if (input.isNeeded() && !seen.contains(input.name())) {
                throw refused("has no column \"" + input.name() + "\", which is needed.");
            }
        }
        return columns;
    }

    private String names() {
        return inputs.stream().map(Input::name).collect(Collectors.joining(", "));
    }

    private Refused refused(String what) {
        return new CsvFile(file).refused(what);
    }
}
