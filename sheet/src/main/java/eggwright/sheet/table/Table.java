package eggwright.sheet.table;

import java.util.List;

/**
 * A table as it stands in a file.
 *
 * @param file the file's name, without its folder
 * @param header the names in row 1, trimmed; no two alike
 * @param rows the rows below it that hold anything, each with as many cells as the header
 */
public record Table(String file, List<String> header, List<Row> rows) {
    public Table {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param number as a spreadsheet numbers it; the header is row 1
     */
    public record Row(int number, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** The letters over a column, counted from 0: A, B, … Z, AA. */
    public static String letters(int column) {
        var letters = new StringBuilder();
        for (int left = column; left >= 0; left = left / 26 - 1) {
            letters.insert(0, (char) ('A' + left % 26));
        }
        return letters.toString();
    }
}
