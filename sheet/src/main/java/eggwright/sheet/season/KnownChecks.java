package eggwright.sheet.season;

import eggwright.book.entry.Entry;
import eggwright.book.name.EntryId;
import eggwright.sheet.problem.Problems;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Whether the rows of one set agree with what the book holds of it. */
final class KnownChecks {
    private static final String OTHER_NAME = "Give it another name here, such as one with the year.";

    private final Problems problems;

    KnownChecks(Problems problems) {
        this.problems = problems;
    }

    /** Whether the set of the file can be the set of the book at all. */
    boolean sameSet(SetRows rows, KnownSet known) {
        if (known.isEmpty()) {
            return true;
        }
        var first = rows.loads().isEmpty() ? rows.whole() : rows.loads().getFirst();
        if (first == null) {
            return true;
        }
        var here = KnownSet.words(
                first.setOn(),
                rows.loads().stream().map(SeasonRow::tray).toList(),
                rows.loads().stream().mapToInt(SeasonRow::eggs).sum());
        if (known.wasNoted()) {
            return problem(
                    first,
                    "is in the book already, as a person noted it (" + known.words() + "); here it is " + here,
                    OTHER_NAME);
        }
        var fresh = rows.loads().stream()
                .filter(r -> known.entries(r.tray()).isEmpty())
                .toList();
        if (fresh.size() == rows.loads().size() && !first.setOn().equals(known.setOn())) {
            return problem(first, "is in the book already (" + known.words() + "); here it is " + here, OTHER_NAME);
        }
        if (known.isOneLoad() && rows.loads().stream().anyMatch(r -> !r.isAll())) {
            return problem(
                    first,
                    "is in the book as one load without trays (" + known.words() + "); here it is " + here,
                    OTHER_NAME);
        }
        if (!fresh.isEmpty() && known.hasCountsOfTheWhole()) {
            return problem(
                    fresh.getFirst(),
                    "is in the book with counts of the whole set (" + known.words() + "); tray "
                            + fresh.getFirst().tray() + " is not among its trays",
                    OTHER_NAME);
        }
        return true;
    }

    private boolean problem(SeasonRow row, String what, String right) {
        problems.add(row.number(), SeasonColumn.SET.word(), row.set().text(), what, right);
        return false;
    }

    /** How a row stands to the book. */
    enum Standing {
        NEW,
        KNOWN,
        CHANGED
    }

    /** Compares what a row says with what the book holds of it; a changed row is a problem that shows both. */
    Standing standing(SeasonRow row, List<Entry> says, KnownSet known) {
        var holds = known.entries(row.tray());
        if (holds.isEmpty()) {
            return says.isEmpty() && !known.isEmpty() ? Standing.KNOWN : Standing.NEW;
        }
        if (hours(holds).equals(hours(says))) {
            return Standing.KNOWN;
        }
        var here = RowOfEntries.of(row.set(), row.tray(), row.species(), says);
        var inTheBook = RowOfEntries.of(row.set(), row.tray(), row.species(), holds);
        problems.add(
                row.number(),
                null,
                null,
                "set " + row.set() + ", tray " + row.tray() + " is in the book with other content: "
                        + differences(inTheBook, here),
                "What was imported is not overwritten: mend it in the book, or put the row back as it was.");
        return Standing.CHANGED;
    }

    private static String differences(SeasonRow inTheBook, SeasonRow here) {
        var different = new ArrayList<String>();
        for (var column : SeasonColumn.values()) {
            var was = inTheBook.shown(column);
            var is = here.shown(column);
            if (!was.equals(is)) {
                different.add(column.word() + " " + shown(was) + " in the book, " + shown(is) + " here");
            }
        }
        return different.isEmpty() ? "the same values, but at other hours of the day" : String.join("; ", different);
    }

    private static String shown(String value) {
        return value.isEmpty() ? "empty" : value;
    }

    /** By the local hour, so that a row stays known when the farm names its time zone after the first import. */
    private static Map<EntryId, LocalDateTime> hours(List<Entry> entries) {
        var hours = new HashMap<EntryId, LocalDateTime>();
        for (var entry : entries) {
            hours.put(entry.id(), entry.happened().toLocalDateTime());
        }
        return hours;
    }
}
