package eggwright.cli.csv;

import de.siegmar.fastcsv.reader.CsvRecord;
import eggwright.cli.voice.Refused;
import eggwright.sheet.problem.Near;
import eggwright.stats.agreement.AgreementTable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A table of counts as it lies in a file: the first row and the first column name the same categories, in any order;
 * whole counts inside. Cells that are empty beyond the last name, and rows without anything in them, are passed over, as
 * spreadsheets leave them.
 */
public final class CountTable {
    private static final long MOST_EGGS = 10_000_000;

    /** Words that head sums, which would be counted as a further category. */
    private static final Set<String> SUMS = Set.of("total", "totals", "sum", "sums");

    private final CsvFile file;
    private final List<String> columns;
    private final Map<String, List<Long>> rows = new LinkedHashMap<>();

    private CountTable(CsvFile file, CsvRecord header) {
        this.file = file;
        this.columns = columns(header);
    }

    /**
     * Reads a file: the first look's word is the row, the second's the column.
     *
     * @throws Refused if it is no such table; the sentence names the file, row, column and value
     */
    public static AgreementTable read(Path path) {
        var file = new CsvFile(path);
        var found = new ArrayList<CountTable>(1);
        file.read(records -> {
            if (!records.hasNext()) {
                throw file.refused("is empty. " + LAYOUT);
            }
            var table = new CountTable(file, records.next());
            table.fill(records);
            found.add(table);
        });
        return found.getFirst().table();
    }

    private static final String LAYOUT =
            "Write the second look's categories in the first row, the first look's in the first column, and counts "
                    + "inside.";

    private List<String> columns(CsvRecord header) {
        var names = new ArrayList<>(
                header.getFields().stream().map(String::strip).skip(1).toList());
        while (!names.isEmpty() && names.getLast().isEmpty()) {
            names.removeLast();
        }
        if (names.isEmpty()) {
            throw file.refused("names no category in row 1. " + LAYOUT);
        }
        var seen = new HashSet<String>();
        for (int i = 0; i < names.size(); i++) {
            var name = names.get(i);
            if (name.isEmpty()) {
                throw file.refused("has no name over column " + (i + 2) + " in row 1. Name the category.");
            }
            if (!seen.add(name)) {
                throw file.refused("has the column \"" + CsvFile.shortened(name) + "\" twice. Name it once.");
            }
            refuseSums("column", name);
        }
        return List.copyOf(names);
    }

    private void refuseSums(String what, String name) {
        if (SUMS.contains(name.toLowerCase(Locale.ROOT))) {
            throw file.refused(
                    "has a " + what + " \"" + name + "\". Leave sums out; they would be counted as a category.");
        }
    }

    private void fill(Iterator<CsvRecord> records) {
        while (records.hasNext()) {
            var record = records.next();
            if (record.getFields().stream().anyMatch(cell -> !cell.isBlank())) {
                row(record);
            }
        }
    }

    private void row(CsvRecord record) {
        long number = record.getStartingLineNumber();
        var name = record.getField(0).strip();
        if (name.isEmpty()) {
            throw file.refused("has no name in row " + number + ", column 1. Name the category.");
        }
        refuseSums("row", name);
        if (!columns.contains(name)) {
            throw file.refused("names \"" + CsvFile.shortened(name) + "\" in row " + number + ", which no column does."
                    + Near.to(name, columns)
                            .map(near -> " Did you mean \"" + near + "\"?")
                            .orElse("")
                    + " Give each category a row and a column. There are columns for " + String.join(", ", columns)
                    + ".");
        }
        if (rows.containsKey(name)) {
            throw file.refused("names \"" + name + "\" in row " + number + " for the second time. Name it once.");
        }
        rows.put(name, counts(record, number, name));
    }

    private List<Long> counts(CsvRecord record, long number, String name) {
        for (int i = columns.size() + 1; i < record.getFieldCount(); i++) {
            if (!record.getField(i).isBlank()) {
                throw file.refused("has \""
                        + CsvFile.shortened(record.getField(i).strip()) + "\" in row " + number
                        + " (" + name + "), column " + (i + 1) + ", but row 1 names no category there. Name it or "
                        + "leave the cell empty.");
            }
        }
        var counts = new ArrayList<Long>();
        for (int i = 0; i < columns.size(); i++) {
            var cell = i + 1 < record.getFieldCount() ? record.getField(i + 1).strip() : "";
            counts.add(count(cell, "row " + number + " (" + name + "), column \"" + columns.get(i) + "\""));
        }
        return counts;
    }

    private long count(String cell, String where) {
        if (cell.isEmpty()) {
            throw file.refused("has no count in " + where + ". Write 0 where there was none.");
        }
        long count;
        try {
            count = Long.parseLong(cell);
        } catch (NumberFormatException notWhole) {
            throw file.refused("has \"" + CsvFile.shortened(cell) + "\" in " + where
                    + ", which is not a whole number. Write it like 12.");
        }
        if (count < 0 || count > MOST_EGGS) {
            throw file.refused("has " + count + " in " + where + ", which is outside 0 to " + MOST_EGGS + ".");
        }
        return count;
    }

    private AgreementTable table() {
        for (var column : columns) {
            if (!rows.containsKey(column)) {
                throw file.refused("has a column \"" + column
                        + "\" but no row of that name. Give it a row, with 0 where there was none.");
            }
        }
        var counts =
                columns.stream().map(row -> rows.getOrDefault(row, List.of())).toList();
        long all =
                counts.stream().flatMap(List::stream).mapToLong(Long::longValue).sum();
        if (all < 1 || all > MOST_EGGS) {
            throw file.refused("counts " + all + " in all, which is outside 1 to " + MOST_EGGS + ".");
        }
        return new AgreementTable(columns, counts);
    }
}
