package eggwright.sheet.logger;

import eggwright.sheet.problem.Problem;
import eggwright.sheet.table.Cell;
import eggwright.sheet.table.Table;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Rows of a workbook, which the table reader has read whole. */
final class XlsxRows implements LoggerRows {
    private final Table table;
    private int next = -1;

    XlsxRows(Table table) {
        this.table = table;
    }

    @Override
    public @Nullable Row next() {
        int at = next++;
        if (at < 0) {
            return new Row(1, table.header());
        }
        if (at >= table.rows().size()) {
            return null;
        }
        var row = table.rows().get(at);
        var cells = new ArrayList<String>();
        for (Cell cell : row.cells()) {
            cells.add(cell.shown());
        }
        return new Row(row.number(), List.copyOf(cells));
    }

    @Override
    public @Nullable Problem fault() {
        return null;
    }

    @Override
    public void close() {}
}
