package eggwright.sheet.season;

import eggwright.sheet.problem.Problems;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Whether the numbers and dates of one load, or of a whole set, agree with each other. */
final class RowChecks {
    private static final List<SeasonColumn> IN_ORDER = List.of(
            SeasonColumn.LAID_FROM,
            SeasonColumn.LAID_TO,
            SeasonColumn.SET_ON,
            SeasonColumn.CANDLED_ON,
            SeasonColumn.TRANSFERRED_ON,
            SeasonColumn.HATCHED_ON);

    private final Problems problems;
    private final Warnings warnings;

    RowChecks(Problems problems, Warnings warnings) {
        this.problems = problems;
        this.warnings = warnings;
    }

    void dates(SeasonRow row) {
        SeasonColumn before = null;
        for (var column : IN_ORDER) {
            var date = row.date(column);
            if (date == null) {
                continue;
            }
            var earlier = before == null ? null : row.date(before);
            if (before != null && earlier != null && date.isBefore(earlier)) {
                problem(
                        row,
                        column,
                        "is before " + before.word() + " (" + earlier + ")",
                        "The dates of a row run: laid, set, candled, transferred, hatched.");
            }
            before = earlier != null && date.isBefore(earlier) ? before : column;
        }
    }

    /** The counts of one load; for a whole set, those of all its rows added up. */
    void counts(SeasonRow row) {
        if (row.eggs() < 1) {
            problem(row, SeasonColumn.EGGS, "eggs make no tray", "Write at least 1, or leave the row out.");
            return;
        }
        int removed = row.sum(SeasonColumn.REMOVED);
        if (removed > row.eggs()) {
            problem(
                    row,
                    SeasonColumn.EGGS,
                    "is less than the " + removed + " taken out at the lamp (" + listed(row, SeasonColumn.REMOVED)
                            + ")",
                    "Mend the eggs set, or the counts.");
            return;
        }
        int left = row.eggs() - removed;
        if (row.n(SeasonColumn.DOUBTFUL) > left) {
            warnings.add(
                    row,
                    SeasonColumn.DOUBTFUL,
                    "more eggs were doubtful than were left; only as many as were left are kept.");
        }
        var transferred = row.count(SeasonColumn.TRANSFERRED);
        if (transferred != null && transferred > left) {
            problem(
                    row,
                    SeasonColumn.TRANSFERRED,
                    "is more than the " + left + " left of " + row.eggs() + " set after " + removed + " were taken out",
                    "Mend the count, or those at the lamp.");
            return;
        }
        if (transferred != null && transferred < left) {
            warnings.add(
                    row,
                    SeasonColumn.TRANSFERRED,
                    "fewer eggs were transferred than were left after the lamp; the others show as left behind.");
        }
        if (takeOff(row, transferred == null ? left : transferred, transferred)) {
            opened(row);
        }
    }

    /** Whether the chicks could come of the eggs that were there. */
    private boolean takeOff(SeasonRow row, int there, @Nullable Integer transferred) {
        int out = row.sum(SeasonColumn.TAKE_OFF);
        if (out > there) {
            problem(
                    row,
                    first(row, SeasonColumn.TAKE_OFF),
                    "is too many: " + listed(row, SeasonColumn.TAKE_OFF) + " are more than the " + there
                            + (transferred == null ? " left after the lamp" : " transferred"),
                    "Mend the counts.");
            return false;
        }
        if (row.date(SeasonColumn.HATCHED_ON) != null && !row.hasAny(SeasonColumn.TAKE_OFF)) {
            warnings.add(
                    row,
                    SeasonColumn.HATCHED_ON,
                    "no chicks are counted; the eggs that were left are unaccounted for.");
        }
        return true;
    }

    private void opened(SeasonRow row) {
        int named = row.sum(SeasonColumn.CLASSES);
        var given = row.count(SeasonColumn.OPENED);
        if (given != null && named > given) {
            problem(
                    row,
                    SeasonColumn.OPENED,
                    "is less than the " + named + " eggs named (" + listed(row, SeasonColumn.CLASSES) + ")",
                    "Write every egg that was opened.");
            return;
        }
        if (given == null && named > 0) {
            warnings.add(
                    row,
                    SeasonColumn.OPENED,
                    "is empty although eggs are named; the sum of the named is taken as opened.");
        }
        if (given != null && named < given) {
            warnings.add(
                    row,
                    SeasonColumn.OPENED,
                    "more eggs were opened than are named; those without a class stay unaccounted for.");
        }
        clearsOpened(row);
    }

    private void clearsOpened(SeasonRow row) {
        int opened = row.opened();
        int clear = row.n(SeasonColumn.CLEAR);
        var given = row.count(SeasonColumn.CLEARS_OPENED);
        if (given != null && given > opened) {
            problem(
                    row,
                    SeasonColumn.CLEARS_OPENED,
                    "is more than the " + opened + " eggs opened",
                    "It counts those of the opened eggs that were clears.");
            return;
        }
        if (given != null && given > clear) {
            problem(
                    row,
                    SeasonColumn.CLEARS_OPENED,
                    "is more than the " + clear + " clears taken out",
                    "It counts those of the clears that were opened.");
            return;
        }
        int clears = given == null ? Math.min(clear, opened) : given;
        if (given == null && clears > 0) {
            warnings.add(row, SeasonColumn.CLEARS_OPENED, "is empty; the lesser of clear and opened is taken.");
        }
        int others = row.eggs() - clear - row.sum(SeasonColumn.TAKE_OFF);
        if (opened - clears > others) {
            problem(
                    row,
                    row.count(SeasonColumn.OPENED) == null ? first(row, SeasonColumn.CLASSES) : SeasonColumn.OPENED,
                    "is too many: beside " + clears + " clears, " + (opened - clears) + " eggs were opened, but only "
                            + others + " were neither clear nor left the shell",
                    "Mend the counts.");
        }
    }

    private static SeasonColumn first(SeasonRow row, List<SeasonColumn> columns) {
        return columns.stream().filter(c -> row.n(c) > 0).findFirst().orElse(columns.getFirst());
    }

    private static String listed(SeasonRow row, List<SeasonColumn> columns) {
        return columns.stream()
                .filter(c -> row.n(c) > 0)
                .map(c -> c.word() + " " + row.n(c))
                .collect(Collectors.joining(", "));
    }

    private void problem(SeasonRow row, SeasonColumn column, String what, String right) {
        problems.add(row.number(), column.word(), row.shown(column), what, right);
    }
}
