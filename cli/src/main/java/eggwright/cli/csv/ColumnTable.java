package eggwright.cli.csv;

import de.siegmar.fastcsv.reader.CsvRecord;
import eggwright.cli.voice.Refused;
import eggwright.sheet.problem.Near;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Some columns of a file, by name, read once from top to bottom. Rows in which nothing stands are passed over. */
public final class ColumnTable {
    private static final int FIRST_ROOM = 1024;

    private final CsvFile file;
    private final Map<String, Filling> columns = new LinkedHashMap<>();
    private int[] lines = new int[FIRST_ROOM];
    private int rows;

    private ColumnTable(CsvFile file) {
        this.file = file;
    }

    /**
     * Reads the columns that are wanted.
     *
     * @param mayBeEmpty those of them in which a cell may be empty
     * @throws Refused if the file has no such column or no rows, or a cell is empty; the sentence names file, row, column
     */
    public static ColumnTable read(Path path, Collection<String> wanted, Set<String> mayBeEmpty) {
        var table = new ColumnTable(new CsvFile(path));
        table.file.read(records -> table.fill(records, wanted, mayBeEmpty));
        return table;
    }

    /** One that was wanted. */
    public Column column(String name) {
        var filling = java.util.Objects.requireNonNull(columns.get(name), name);
        return new Column(
                file,
                name,
                List.copyOf(filling.words.keySet()),
                Arrays.copyOf(filling.wordOfRow, rows),
                filling.firstLine.stream().mapToInt(Integer::intValue).toArray());
    }

    public int rows() {
        return rows;
    }

    /** The line of a row, as a spreadsheet shows it, the header being 1. */
    public int line(int row) {
        return lines[row];
    }

    /** A refusal of the file. */
    public Refused refused(String what) {
        return file.refused(what);
    }

    private void fill(Iterator<CsvRecord> records, Collection<String> wanted, Set<String> mayBeEmpty) {
        if (!records.hasNext()) {
            throw file.refused("is empty. Its first row names the columns.");
        }
        var header = records.next().getFields().stream().map(String::strip).toList();
        for (var name : wanted) {
            columns.computeIfAbsent(name, n -> new Filling(n, placeIn(header, n), mayBeEmpty.contains(n)));
        }
        while (records.hasNext()) {
            var record = records.next();
            if (record.getFields().stream().anyMatch(cell -> !cell.isBlank())) {
                row(record);
            }
        }
        if (rows == 0) {
            throw file.refused("has no rows under its header.");
        }
    }

    private int placeIn(List<String> header, String name) {
        int place = header.indexOf(name);
        if (place < 0) {
            var named = header.stream().filter(each -> !each.isEmpty()).toList();
            throw file.refused("has no column \"" + CsvFile.shortened(name) + "\"."
                    + Near.to(name, named)
                            .map(near -> " Did you mean \"" + near + "\"?")
                            .orElse("")
                    + " It has: " + CsvFile.shortenedList(named) + ".");
        }
        if (header.lastIndexOf(name) != place) {
            throw file.refused("has the column \"" + CsvFile.shortened(name) + "\" twice. Name it once.");
        }
        return place;
    }

    private void row(CsvRecord record) {
        int line = Math.toIntExact(record.getStartingLineNumber());
        if (rows == lines.length) {
            lines = Arrays.copyOf(lines, 2 * rows);
        }
        lines[rows] = line;
        for (var column : columns.values()) {
            var cell = column.place < record.getFieldCount()
                    ? record.getField(column.place).strip()
                    : "";
            if (cell.isEmpty() && !column.mayBeEmpty) {
                throw file.refused("has nothing in row " + line + ", column \"" + column.name
                        + "\". Fill the cell, or leave the " + "row out.");
            }
            column.add(cell, rows, line);
        }
        rows++;
    }

    /** A column while it is read. */
    private static final class Filling {
        private final String name;
        private final int place;
        private final boolean mayBeEmpty;
        private final Map<String, Integer> words = new LinkedHashMap<>();
        private final List<Integer> firstLine = new ArrayList<>();
        private int[] wordOfRow = new int[FIRST_ROOM];

        Filling(String name, int place, boolean mayBeEmpty) {
            this.name = name;
            this.place = place;
            this.mayBeEmpty = mayBeEmpty;
        }

        void add(String cell, int row, int line) {
            if (row == wordOfRow.length) {
                wordOfRow = Arrays.copyOf(wordOfRow, 2 * row);
            }
            wordOfRow[row] = words.computeIfAbsent(cell, word -> {
                firstLine.add(line);
                return words.size();
            });
        }
    }
}
