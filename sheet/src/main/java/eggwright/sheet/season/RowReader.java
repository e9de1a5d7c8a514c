package eggwright.sheet.season;

import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.sheet.problem.Problems;
import eggwright.sheet.table.Cell;
import eggwright.sheet.table.Table;
import eggwright.trade.Species;
import eggwright.trade.SpeciesWord;
import eggwright.units.OutOfRange;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads the cells of rows. Every cell that is wrong is named, not only the first. */
final class RowReader {
    private final Map<SeasonColumn, Integer> places;
    private final Problems problems;
    private final Map<String, SpeciesWord> speciesRead = new HashMap<>();

    RowReader(Map<SeasonColumn, Integer> places, Problems problems) {
        this.places = places;
        this.problems = problems;
    }

    /** The row; empty where any of its cells is wrong. */
    Optional<SeasonRow> read(Table.Row row) {
        var texts = new EnumMap<SeasonColumn, String>(SeasonColumn.class);
        var fine = true;
        for (var place : places.entrySet()) {
            var column = place.getKey();
            var text = text(row, column, row.cells().get(place.getValue()));
            if (text == null) {
                fine = false;
            } else if (!text.isEmpty()) {
                texts.put(column, text);
            } else if (SeasonColumn.REQUIRED.contains(column)) {
                fine = problem(row, column, null, "is empty", "Every row gives " + column.word() + ".");
            }
        }
        var dates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        var counts = new EnumMap<SeasonColumn, Integer>(SeasonColumn.class);
        for (var given : texts.entrySet()) {
            var column = given.getKey();
            fine &= switch (column.holds()) {
                case DATE -> put(row, column, dates, CellText.date(given.getValue()));
                case COUNT -> put(row, column, counts, CellText.count(given.getValue()));
                case NAME, SPECIES -> true;
            };
        }
        var set = name(row, SeasonColumn.SET, texts, SetName::new);
        var tray = name(row, SeasonColumn.TRAY, texts, RowReader::tray);
        var pen = name(row, SeasonColumn.PEN, texts, PenName::new);
        var machine = name(row, SeasonColumn.MACHINE, texts, MachineName::new);
        var section = name(row, SeasonColumn.SECTION, texts, SectionName::new);
        var species = species(row, texts.get(SeasonColumn.SPECIES));
        fine &= given(pen, texts, SeasonColumn.PEN)
                && given(machine, texts, SeasonColumn.MACHINE)
                && given(section, texts, SeasonColumn.SECTION);
        return fine && set != null && tray != null && species != null
                ? Optional.of(new SeasonRow(row.number(), set, tray, species, pen, machine, section, dates, counts))
                : Optional.empty();
    }

    private static boolean given(@Nullable Object read, Map<SeasonColumn, String> texts, SeasonColumn column) {
        return read != null || !texts.containsKey(column);
    }

    private static TrayName tray(String text) {
        return text.equalsIgnoreCase(SeasonRow.ALL.text()) ? SeasonRow.ALL : new TrayName(text);
    }

    private @Nullable String text(Table.Row row, SeasonColumn column, Cell cell) {
        return switch (cell) {
            case Cell.Text it -> it.shown();
            case Cell.Formula it -> {
                problem(row, column, it.shown(), "is a formula", "Write the " + wanted(column) + " itself.");
                yield null;
            }
            case Cell.Faulty it -> {
                problem(
                        row,
                        column,
                        it.shown(),
                        "is what a spreadsheet shows when a formula fails",
                        "Write the " + wanted(column) + " itself.");
                yield null;
            }
        };
    }

    private static String wanted(SeasonColumn column) {
        return switch (column.holds()) {
            case COUNT -> "number";
            case DATE -> "date";
            case NAME, SPECIES -> "name";
        };
    }

    private <T> boolean put(Table.Row row, SeasonColumn column, Map<SeasonColumn, T> into, CellText<T> read) {
        return switch (read) {
            case CellText.Value<T> it -> {
                into.put(column, it.value());
                yield true;
            }
            case CellText.Wrong<T> it -> problem(row, column, it.typed(), it.what(), it.right());
        };
    }

    private <T> @Nullable T name(
            Table.Row row, SeasonColumn column, Map<SeasonColumn, String> texts, Function<String, T> making) {
        var text = texts.get(column);
        if (text == null) {
            return null;
        }
        try {
            return making.apply(text);
        } catch (OutOfRange wrong) {
            problem(
                    row,
                    column,
                    text,
                    "is no name",
                    "A name has at most " + eggwright.book.name.Name.LONGEST + " characters and no line break.");
            return null;
        }
    }

    private @Nullable Species species(Table.Row row, @Nullable String text) {
        if (text == null) {
            return null;
        }
        return switch (speciesRead.computeIfAbsent(text, Species::parse)) {
            case SpeciesWord.Known it -> it.species();
            case SpeciesWord.Unknown it -> {
                problem(
                        row,
                        SeasonColumn.SPECIES,
                        text,
                        "is not a species Eggwright knows",
                        "Did you mean " + it.nearest().word() + "?");
                yield null;
            }
        };
    }

    private boolean problem(Table.Row row, SeasonColumn column, @Nullable String value, String what, String right) {
        problems.add(row.number(), column.word(), value, what, right);
        return false;
    }
}
