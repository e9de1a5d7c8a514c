package eggwright.sheet.season;

import eggwright.book.name.TrayName;
import eggwright.sheet.problem.Problems;
import java.util.HashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether the rows of one set agree with each other. */
final class SetChecks {
    private static final List<SeasonColumn> OF_TRAYS = List.of(
            SeasonColumn.PEN, SeasonColumn.MACHINE, SeasonColumn.SECTION, SeasonColumn.LAID_FROM, SeasonColumn.LAID_TO);

    private final Problems problems;
    private final Warnings warnings;

    SetChecks(Problems problems, Warnings warnings) {
        this.problems = problems;
        this.warnings = warnings;
    }

    /** Each tray once, and all on one day. */
    void alike(List<SeasonRow> rows) {
        var seen = new HashMap<TrayName, Integer>();
        var first = rows.getFirst();
        for (var row : rows) {
            var before = seen.putIfAbsent(row.tray(), row.number());
            if (before != null) {
                problem(
                        row,
                        SeasonColumn.TRAY,
                        row.tray().text(),
                        "stands in set " + row.set() + " twice (row " + before + ")",
                        "Write each tray of a set in one row.");
            }
            if (!row.setOn().equals(first.setOn())) {
                problem(
                        row,
                        SeasonColumn.SET_ON,
                        row.shown(SeasonColumn.SET_ON),
                        "is not the date of set " + row.set() + " in row " + first.number() + " (" + first.setOn()
                                + ")",
                        "A set goes in on one day; give the other trays a set of their own.");
            }
        }
    }

    /** The counts of the whole set against those of its trays. */
    void whole(SetRows rows, SeasonRow all) {
        if (all.eggs() != rows.eggs()) {
            problem(
                    all,
                    SeasonColumn.EGGS,
                    all.shown(SeasonColumn.EGGS),
                    "is not the sum of the trays of set " + all.set() + ", which hold " + rows.eggs() + " eggs",
                    "The tray \"all\" stands for all trays of its set together.");
        }
        if (rows.trays().stream().noneMatch(r -> r.species() == all.species())) {
            problem(
                    all,
                    SeasonColumn.SPECIES,
                    all.species().word(),
                    "is in no tray of set " + all.set(),
                    "Write the species of one of its trays.");
        }
        for (var column : OF_TRAYS) {
            var shown = all.shown(column);
            if (!shown.isEmpty()
                    && rows.trays().stream().anyMatch(r -> !r.shown(column).equals(shown))) {
                warnings.add(all, column, "belongs to the trays; in the row that counts the whole set it is not kept.");
            }
        }
        for (var column : SeasonColumn.values()) {
            if (column.holds() == SeasonColumn.Holds.COUNT && column != SeasonColumn.EGGS) {
                once(rows, all, column);
            }
        }
    }

    /** A count is taken by tray or for the whole set, not both: nobody could say whether to add them. */
    private void once(SetRows rows, SeasonRow all, SeasonColumn column) {
        int ofTrays = rows.trays().stream().mapToInt(r -> r.n(column)).sum();
        var same = column == SeasonColumn.TRANSFERRED && ofTrays == all.n(column);
        if (ofTrays > 0 && all.n(column) > 0 && column != SeasonColumn.DOUBTFUL && !same) {
            problem(
                    all,
                    column,
                    all.shown(column),
                    "is counted for the whole set, and " + ofTrays + " for its trays",
                    "Write a count in the rows of the trays or in that of the whole set, not in both.");
        }
    }

    private void problem(SeasonRow row, SeasonColumn column, @Nullable String value, String what, String right) {
        problems.add(row.number(), column.word(), value, what, right);
    }
}
