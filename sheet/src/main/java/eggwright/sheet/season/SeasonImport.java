package eggwright.sheet.season;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.name.SetName;
import eggwright.book.store.Offered;
import eggwright.sheet.problem.Problems;
import eggwright.sheet.table.Table;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Reads a season file: one row for each tray of a past or current season, in {@link SeasonColumn}s of any order. What
 * comes out is the same whatever the order of rows and columns, and the same each time.
 */
public final class SeasonImport {
    private final Importing into;
    private final KnownSets book;
    private final Problems problems;
    private final Warnings warnings = new Warnings();
    private final List<Entry> entries = new ArrayList<>();
    private int newRows;
    private int knownRows;

    private SeasonImport(Table table, Importing into, Collection<Kept> book) {
        this.into = into;
        this.book = new KnownSets(book);
        this.problems = new Problems(table.file());
    }

    /**
     * Reads a table as a season.
     *
     * @param book every entry that the book holds
     */
    public static SeasonRead read(Table table, Importing into, Collection<Kept> book) {
        return new SeasonImport(table, into, book).read(table);
    }

    private SeasonRead read(Table table) {
        var places = HeaderRead.places(table, problems);
        if (!places.keySet().containsAll(SeasonColumn.REQUIRED)) {
            return refused();
        }
        var reader = new RowReader(places, problems);
        var checks = new RowChecks(problems, warnings);
        var dates = new Dates(warnings);
        var sets = new TreeMap<SetName, List<SeasonRow>>();
        for (var cells : table.rows()) {
            reader.read(cells).ifPresent(row -> {
                checks.dates(row);
                dates.warnOfUnusual(row);
                sets.computeIfAbsent(row.set(), s -> new ArrayList<>()).add(dates.filled(row));
            });
        }
        // A row that could not be read is missing from its set: what is said of the set then would mislead.
        if (problems.isEmpty()) {
            sets.forEach(this::take);
        }
        return problems.isEmpty() ? taken() : refused();
    }

    private void take(SetName set, List<SeasonRow> given) {
        var known = book.of(set);
        var rows = SetRows.of(set, given, known);
        var between = new SetChecks(problems, warnings);
        between.alike(given);
        var checks = new RowChecks(problems, warnings);
        rows.loads().forEach(checks::counts);
        given.forEach(this::endsInTime);
        var whole = rows.whole();
        if (whole != null) {
            between.whole(rows, whole);
        }
        if (!problems.isEmpty()) {
            return;
        }
        var againstTheBook = new KnownChecks(problems);
        if (!againstTheBook.sameSet(rows, known)) {
            return;
        }
        var making = new RowEntries(into);
        for (var row : rows.loads()) {
            keep(row, making.ofLoad(WholeSet.withoutRepeated(row, whole)), known, againstTheBook);
        }
        if (whole != null) {
            var added = rows.added(whole);
            checks.counts(added);
            if (problems.isEmpty()) {
                int removed = added.sum(SeasonColumn.REMOVED);
                var says = making.ofWholeSet(
                        WholeSet.withoutRepeated(whole, rows), rows.trayNames(), removed, added.eggs() - removed);
                keep(whole, says, known, againstTheBook);
            }
        }
    }

    private void keep(SeasonRow row, List<Entry> says, KnownSet known, KnownChecks againstTheBook) {
        switch (againstTheBook.standing(row, says, known)) {
            case NEW -> newRows++;
            case KNOWN -> knownRows++;
            case CHANGED -> {
                return;
            }
        }
        entries.addAll(says);
    }

    private void endsInTime(SeasonRow row) {
        for (var date : row.dates().entrySet()) {
            if (!RowChecks.isWithinYears(date.getValue())) {
                problems.add(
                        row.number(),
                        date.getKey().word(),
                        null,
                        "would be " + date.getValue() + ", and years run to " + CellText.LAST_YEAR,
                        "Mend set_on.");
            }
        }
    }

    private SeasonRead taken() {
        entries.sort(Comparator.comparing((Entry e) -> e.happened().toInstant()).thenComparing(Entry::id));
        var offered = entries.stream()
                .map(e -> new Offered(e, into.written().apply(e), Duration.ZERO))
                .toList();
        return new SeasonRead.Entries(offered, warnings.all(), newRows, knownRows);
    }

    private SeasonRead refused() {
        return new SeasonRead.Refused(problems.shown(), problems.beyond());
    }
}
