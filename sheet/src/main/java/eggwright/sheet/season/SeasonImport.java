package eggwright.sheet.season;

import eggwright.book.entry.Entry;
import eggwright.book.entry.Kept;
import eggwright.book.name.SetName;
import eggwright.book.store.Offered;
import eggwright.sheet.problem.Problems;
import eggwright.sheet.table.Table;
import java.time.Duration;
import java.time.Instant;
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
                var filled = dates.filled(row);
                endsInTime(filled);
                if (!row.isAll()) {
                    checks.counts(filled);
                }
                sets.computeIfAbsent(row.set(), s -> new ArrayList<>()).add(filled);
            });
        }
        var between = new SetChecks(problems, warnings);
        sets.values().forEach(between::alike);
        // A row that could not be read is missing from its set: what is said of whole sets then would mislead.
        if (problems.isEmpty()) {
            sets.forEach(this::take);
        }
        return problems.isEmpty() ? taken() : refused();
    }

    private void take(SetName set, List<SeasonRow> given) {
        int before = problems.count();
        var known = book.of(set);
        var rows = SetRows.of(set, given, known);
        var checks = new RowChecks(problems, warnings);
        rows.loads().stream().filter(SeasonRow::isAll).forEach(checks::counts);
        var whole = rows.whole();
        var againstTheBook = new KnownChecks(problems);
        if (!againstTheBook.sameSet(rows, known)) {
            return;
        }
        if (whole != null) {
            new SetChecks(problems, warnings).whole(rows, whole);
            if (problems.count() == before) {
                checks.counts(rows.added(whole));
            }
        }
        if (problems.count() > before) {
            return;
        }
        var making = new RowEntries(into);
        for (var row : rows.loads()) {
            var says = making.ofLoad(WholeSet.withoutRepeated(row, rows), WholeSet.openedOn(row, rows));
            keep(row, says, known, againstTheBook);
        }
        if (whole != null) {
            var says = making.ofWholeSet(WholeSet.byItself(whole, rows), rows, WholeSet.openedOn(whole, rows));
            keep(whole, says, known, againstTheBook);
        }
    }

    private void keep(SeasonRow row, List<Entry> says, KnownSet known, KnownChecks againstTheBook) {
        switch (againstTheBook.standing(row, says, known)) {
            case NEW -> {
                newRows++;
                entries.addAll(says);
            }
            case KNOWN -> knownRows++;
            case CHANGED -> {
                // Told as a problem.
            }
        }
    }

    private void endsInTime(SeasonRow row) {
        if (row.opened() > 0 && Dates.ofOpening(row, 0).getYear() > CellText.LAST_YEAR) {
            problems.add(
                    row.number(),
                    SeasonColumn.SET_ON.word(),
                    row.shown(SeasonColumn.SET_ON),
                    "is so late that its eggs would be opened after " + CellText.LAST_YEAR,
                    "Mend set_on.");
        }
        for (var date : row.dates().entrySet()) {
            if (date.getValue().getYear() > CellText.LAST_YEAR) {
                problems.add(
                        row.number(),
                        date.getKey().word(),
                        null,
                        "would be " + date.getValue() + ", and years run to " + CellText.LAST_YEAR,
                        "Mend set_on.");
            }
        }
    }

    /** An entry with its instant, which is dear to work out at each comparison. */
    private record Dated(Instant at, Entry entry) {}

    private SeasonRead taken() {
        var offered = entries.stream()
                .map(e -> new Dated(e.happened().toInstant(), e))
                .sorted(Comparator.comparing(Dated::at)
                        .thenComparing(d -> d.entry().id()))
                .map(d -> new Offered(d.entry(), into.written().apply(d.entry()), Duration.ZERO))
                .toList();
        return new SeasonRead.Entries(offered, warnings.all(), newRows, knownRows);
    }

    private SeasonRead refused() {
        return new SeasonRead.Refused(problems.shown(), problems.beyond());
    }
}
