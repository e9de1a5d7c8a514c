package eggwright.sheet.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;

/** Reads the first sheet of an XLSX workbook (ECMA-376). */
final class XlsxTables {
    /** A small file can unfold into a very large one: reading stops here. */
    private static final long MOST_UNFOLDED = 300_000_000;

    /** More digits than any count or date has; a number of a billion places would fill the memory. */
    private static final int MOST_PLACES = 30;

    /** Rows that hold nothing may be more than a table may have, but not without end. */
    private static final int MOST_ROWS_SEEN = 2 * TableReader.MOST_ROWS;

    private XlsxTables() {}

    static TableRead read(byte[] bytes, String name) {
        try {
            var size = UnfoldedSize.of(bytes, MOST_UNFOLDED);
            if (size == UnfoldedSize.TOO_LARGE) {
                return TableReader.refused(
                        name,
                        "unfolds to more than " + MOST_UNFOLDED / 1_000_000 + " MB",
                        "Leave out other sheets, or save the table as CSV.");
            }
            var building = new TableBuilding(name);
            try (var book = new ReadableWorkbook(
                            new ByteArrayInputStream(bytes), new ReadingOptions(size == UnfoldedSize.FITTING, true));
                    var rows = book.getFirstSheet().openStream()) {
                var each = rows.iterator();
                while (each.hasNext()) {
                    var row = each.next();
                    if (row.getRowNum() > MOST_ROWS_SEEN) {
                        return TableReader.refused(
                                name,
                                "has cells below row " + MOST_ROWS_SEEN,
                                "Take out what stands far below the table.");
                    }
                    if (building.add(row.getRowNum(), cells(row)) == TableBuilding.Wants.NO_MORE) {
                        break;
                    }
                }
            }
            return building.done();
        } catch (IOException | RuntimeException damaged) {
            // The library throws unchecked exceptions of many kinds at damaged files; whichever it is, the file is
            // unread.
            return TableReader.refused(
                    name,
                    "is no whole Excel workbook: it is cut short, damaged or locked by a password",
                    "Copy it again, or open it and save it once more as .xlsx or CSV.");
        }
    }

    private static List<Cell> cells(org.dhatim.fastexcel.reader.Row row) {
        var cells = new ArrayList<Cell>(row.getCellCount());
        for (int i = 0; i < row.getCellCount(); i++) {
            var cell = row.getOptionalCell(i);
            cells.add(cell.isPresent() ? cell(cell.get()) : Cell.EMPTY);
        }
        return cells;
    }

    private static Cell cell(org.dhatim.fastexcel.reader.Cell cell) {
        if (cell.getFormula() != null) {
            return new Cell.Formula("=" + cell.getFormula());
        }
        return switch (cell.getType()) {
            case FORMULA -> new Cell.Formula("=");
            case ERROR -> new Cell.Faulty(String.valueOf(cell.getRawValue()));
            case EMPTY -> Cell.EMPTY;
            case BOOLEAN -> new Cell.Text("1".equals(cell.getRawValue()) ? "TRUE" : "FALSE");
            case STRING -> new Cell.Text(cell.getText().strip());
            case NUMBER -> new Cell.Text(number(cell));
        };
    }

    private static String number(org.dhatim.fastexcel.reader.Cell cell) {
        if (cell.getType() == CellType.NUMBER
                && DateFormats.isDate(cell.getDataFormatId(), cell.getDataFormatString())) {
            var at = cell.asDate();
            return at.toLocalTime().equals(LocalTime.MIDNIGHT)
                    ? at.toLocalDate().toString()
                    : at.toString();
        }
        var raw = new BigDecimal(cell.getRawValue());
        if (Math.abs((long) raw.scale()) > MOST_PLACES || raw.precision() > MOST_PLACES) {
            return cell.getRawValue();
        }
        return raw.signum() == 0 ? "0" : raw.stripTrailingZeros().toPlainString();
    }
}
