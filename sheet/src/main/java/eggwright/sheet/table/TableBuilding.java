package eggwright.sheet.table;

import eggwright.sheet.problem.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/** Puts a table together row by row, whatever it is read from, and finds what is wrong with its shape. */
final class TableBuilding {
    /** Whether further rows would be of use. */
    enum Wants {
        MORE,
        NO_MORE
    }

    private final String file;
    private final Problems problems;
    private final List<String> header = new ArrayList<>();
    private final List<Table.Row> rows = new ArrayList<>();
    private int tooLong;

    TableBuilding(String file) {
        this.file = file;
        this.problems = new Problems(file);
    }

    Wants add(int number, List<Cell> cells) {
        if (number == 1) {
            readHeader(cells);
            return problems.isEmpty() ? Wants.MORE : Wants.NO_MORE;
        }
        int used = used(cells);
        if (used == 0) {
            return Wants.MORE;
        }
        if (header.isEmpty()) {
            problems.add(1, null, null, "is empty", "The first row names the columns.");
            return Wants.NO_MORE;
        }
        if (rows.size() >= TableReader.MOST_ROWS - 1) {
            problems.add(
                    number,
                    null,
                    null,
                    "is one too many; a table has at most " + TableReader.MOST_ROWS + " rows",
                    "Split the file by season.");
            return Wants.NO_MORE;
        }
        if (used > header.size()) {
            problems.add(
                    number,
                    null,
                    cells.get(header.size()).shown(),
                    "stands in column " + Table.letters(header.size()) + ", beyond the " + header.size()
                            + " columns of the header",
                    "A comma inside a cell needs quotation marks round the cell; a number has no comma.");
            return ++tooLong > Problems.MOST ? Wants.NO_MORE : Wants.MORE;
        }
        var row = new ArrayList<>(cells.subList(0, used));
        while (row.size() < header.size()) {
            row.add(Cell.EMPTY);
        }
        rows.add(new Table.Row(number, row));
        return Wants.MORE;
    }

    TableRead done() {
        if (problems.isEmpty() && header.isEmpty()) {
            problems.add(null, null, null, "is empty", "Its first row names the columns.");
        }
        if (problems.isEmpty() && rows.isEmpty()) {
            problems.add(null, null, null, "has a header and no rows below it", "Write at least one row.");
        }
        return problems.isEmpty()
                ? new TableRead.Read(new Table(file, header, rows))
                : new TableRead.Refused(problems.shown(), problems.beyond());
    }

    private static int used(List<Cell> cells) {
        int used = cells.size();
        while (used > 0 && cells.get(used - 1).shown().isEmpty()) {
            used--;
        }
        return used;
    }

    private void readHeader(List<Cell> cells) {
        int used = used(cells);
        if (used > TableReader.MOST_COLUMNS) {
            problems.add(
                    1,
                    null,
                    null,
                    "names " + used + " columns; the most is " + TableReader.MOST_COLUMNS,
                    "Leave out those that are not needed.");
            return;
        }
        var seen = new HashMap<String, Integer>();
        for (int i = 0; i < used; i++) {
            var cell = cells.get(i);
            var name = cell.shown();
            var before = Optional.ofNullable(seen.putIfAbsent(name, i));
            if (!(cell instanceof Cell.Text)) {
                problems.add(1, Table.letters(i), name, "is a formula", "Write the column's name itself.");
            } else if (name.isEmpty()) {
                problems.add(1, Table.letters(i), null, "has no name", "Name the column, or take it out.");
            } else if (before.isPresent()) {
                problems.add(
                        1,
                        name,
                        null,
                        "stands twice, as columns " + Table.letters(before.get()) + " and " + Table.letters(i),
                        "Keep one of them.");
            }
            header.add(name);
        }
    }
}
