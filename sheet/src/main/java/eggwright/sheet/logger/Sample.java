package eggwright.sheet.logger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The beginning of a file: titles, the header, some rows.
 *
 * @param headerRow number of the row that names the columns; 0 where none does
 */
record Sample(int headerRow, List<String> header, List<LoggerRows.Row> rows) {
    /** So many rows are looked at: some days of minutes. */
    static final int MOST = 5_000;

    private static final int MOST_TITLES = 60;

    private static final int MOST_UNIT = 6;

    /** A column of numbers has one in so many cells at least. */
    private static final int FEWEST = 4;

    Sample {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /** Reads on until enough is seen. A row with a time and a number is a reading; the row of words above it the header. */
    static Sample of(LoggerRows from) {
        var titles = new ArrayList<LoggerRows.Row>();
        var rows = new ArrayList<LoggerRows.Row>();
        for (var row = from.next(); row != null && rows.size() < MOST; row = from.next()) {
            if (row.cells().stream().allMatch(String::isEmpty)) {
                continue;
            }
            if (!rows.isEmpty() || isReading(row) || titles.size() >= MOST_TITLES) {
                rows.add(row);
            } else {
                titles.add(row);
            }
        }
        int width = rows.isEmpty() ? 0 : rows.getFirst().cells().size();
        var wide = titles.stream().filter(title -> isWide(title, width)).toList();
        if (wide.isEmpty()) {
            return new Sample(0, named(List.of(), width), rows);
        }
        // The last of them names the columns, unless it tells only the units of the one above.
        var last = wide.getLast();
        if (wide.size() > 1 && isUnits(last.cells())) {
            var header = wide.get(wide.size() - 2);
            return new Sample(header.number(), named(joined(header.cells(), last.cells()), width), rows);
        }
        return new Sample(last.number(), named(last.cells(), width), rows);
    }

    /** As wide as a reading, with a name or two in it. */
    private static boolean isWide(LoggerRows.Row title, int width) {
        return title.cells().stream().filter(c -> !c.isEmpty()).count() >= 2
                && title.cells().size() >= width - 1;
    }

    private static boolean isUnits(List<String> cells) {
        var words = cells.stream().filter(c -> !c.isEmpty()).toList();
        return words.stream().allMatch(c -> c.length() <= MOST_UNIT)
                && words.stream().anyMatch(c -> new HeaderWords(c).isUnit());
    }

    private static List<String> joined(List<String> names, List<String> units) {
        var joined = new ArrayList<String>();
        for (int i = 0; i < Math.max(names.size(), units.size()); i++) {
            var name = i < names.size() ? names.get(i) : "";
            var unit = i < units.size() ? units.get(i) : "";
            joined.add((name + " " + unit).strip());
        }
        return joined;
    }

    private static List<String> named(List<String> cells, int width) {
        var names = new ArrayList<String>();
        for (int i = 0; i < Math.max(width, cells.size()); i++) {
            var name = i < cells.size() ? cells.get(i) : "";
            var plain = name.isEmpty() ? "column " + (i + 1) : name;
            names.add(names.contains(plain) ? plain + " (" + (i + 1) + ")" : plain);
        }
        return names;
    }

    private static boolean isReading(LoggerRows.Row row) {
        boolean hasTime = row.cells().stream().anyMatch(Sample::isTime);
        long numbers = row.cells().stream()
                .filter(c -> DecimalMark.POINT.read(c).isPresent()
                        || DecimalMark.COMMA.read(c).isPresent())
                .count();
        boolean hasDateAndClock = row.cells().stream().anyMatch(Sample::isDate)
                && row.cells().stream().anyMatch(Sample::isClock);
        boolean isPlainNumbers = numbers >= 2
                && numbers == row.cells().stream().filter(c -> !c.isEmpty()).count();
        return (hasTime && numbers > 0) || (hasDateAndClock && numbers > 0) || isPlainNumbers;
    }

    private static boolean isTime(String cell) {
        return Arrays.stream(TimeForm.values())
                .filter(f -> f != TimeForm.SECONDS && f != TimeForm.MILLISECONDS)
                .anyMatch(f -> f.read(cell).isPresent());
    }

    static boolean isDate(String cell) {
        return cell.length() <= 12 && isTime(cell + " 00:00") && !isTime(cell);
    }

    static boolean isClock(String cell) {
        return cell.length() <= 14
                && cell.contains(":")
                && TimeForm.YEAR_FIRST.read("2027-01-01 " + cell).isPresent();
    }

    /** What stands in a column, without what is empty. */
    List<String> column(int index) {
        return rows.stream()
                .filter(r -> index < r.cells().size())
                .map(r -> r.cells().get(index))
                .filter(c -> !c.isEmpty())
                .toList();
    }

    /** The middle of a column's numbers; empty where fewer than one in four is one. */
    OptionalDouble middle(int index, DecimalMark mark) {
        var cells = column(index);
        var numbers = cells.stream()
                .map(mark::read)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sorted()
                .toArray();
        return numbers.length == 0 || numbers.length * FEWEST < cells.size()
                ? OptionalDouble.empty()
                : OptionalDouble.of(numbers[numbers.length / 2]);
    }

    /** Whether numbers are written with a comma. */
    DecimalMark mark() {
        long commas = 0;
        long points = 0;
        for (int i = 0; i < header.size(); i++) {
            for (var cell : column(i)) {
                boolean isTime = cell.contains(":") || isDate(cell);
                commas += !isTime
                                && cell.contains(",")
                                && DecimalMark.COMMA.read(cell).isPresent()
                        ? 1
                        : 0;
                points += !isTime
                                && cell.contains(".")
                                && DecimalMark.POINT.read(cell).isPresent()
                        ? 1
                        : 0;
            }
        }
        return commas > points ? DecimalMark.COMMA : DecimalMark.POINT;
    }
}
