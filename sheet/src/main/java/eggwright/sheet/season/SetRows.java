package eggwright.sheet.season;

import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one set.
 *
 * @param loads the rows of the file that put eggs in, in the order of their numbers
 * @param whole the row of the file that counts the whole set; absent where there is none
 * @param inTheBook rows of trays that only the book holds
 */
record SetRows(SetName set, List<SeasonRow> loads, @Nullable SeasonRow whole, List<SeasonRow> inTheBook) {
    SetRows {
        loads = List.copyOf(loads);
        inTheBook = List.copyOf(inTheBook);
    }

    /** Sorts the rows of a set: {@code all} is a load where the set has no other. */
    static SetRows of(SetName set, List<SeasonRow> rows, KnownSet known) {
        var trays = rows.stream().filter(r -> !r.isAll()).toList();
        var alls = rows.stream().filter(SeasonRow::isAll).toList();
        if (trays.isEmpty() && known.trays().isEmpty()) {
            return new SetRows(set, alls, null, List.of());
        }
        var species = rows.getFirst().species();
        var only = known.trays().stream()
                .filter(tray -> trays.stream().noneMatch(r -> r.tray().equals(tray)))
                .map(tray -> known.row(tray, species))
                .toList();
        return new SetRows(set, trays, alls.isEmpty() ? null : alls.getFirst(), only);
    }

    /** Rows of trays, those of the book among them. */
    List<SeasonRow> trays() {
        return Stream.concat(loads.stream(), inTheBook.stream()).toList();
    }

    List<TrayName> trayNames() {
        return trays().stream().map(SeasonRow::tray).distinct().sorted().toList();
    }

    int eggs() {
        return trays().stream().mapToInt(SeasonRow::eggs).sum();
    }

    /** All rows of the set added up, as one row with the number of that which counts the whole. */
    SeasonRow added(SeasonRow all) {
        var counts = new EnumMap<SeasonColumn, Integer>(SeasonColumn.class);
        var dates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        dates.putAll(all.dates());
        counts.put(SeasonColumn.EGGS, eggs());
        var rows = new ArrayList<>(trays());
        rows.add(all);
        for (var column : SeasonColumn.values()) {
            if (column.holds() == SeasonColumn.Holds.COUNT
                    && column.compareTo(SeasonColumn.EGGS) > 0
                    && rows.stream().anyMatch(r -> r.counts().containsKey(column))) {
                counts.put(column, rows.stream().mapToInt(r -> r.n(column)).sum());
            }
        }
        added(counts, all, rows);
        return new SeasonRow(all.number(), set, all.tray(), all.species(), null, null, null, dates, counts);
    }

    private void added(EnumMap<SeasonColumn, Integer> counts, SeasonRow all, List<SeasonRow> rows) {
        var transferred = all.count(SeasonColumn.TRANSFERRED);
        if (transferred != null) {
            counts.put(SeasonColumn.TRANSFERRED, transferred);
        } else if (trays().stream().anyMatch(r -> r.count(SeasonColumn.TRANSFERRED) == null)) {
            counts.remove(SeasonColumn.TRANSFERRED);
        }
        if (rows.stream().anyMatch(r -> r.count(SeasonColumn.OPENED) == null && r.opened() > 0)) {
            counts.put(
                    SeasonColumn.OPENED,
                    rows.stream().mapToInt(SeasonRow::opened).sum());
        }
        if (all.opened() > 0 && all.count(SeasonColumn.CLEARS_OPENED) == null) {
            counts.remove(SeasonColumn.CLEARS_OPENED);
        } else if (counts.containsKey(SeasonColumn.OPENED)) {
            counts.put(
                    SeasonColumn.CLEARS_OPENED,
                    rows.stream().mapToInt(SetRows::clearsOpened).sum());
        }
    }

    private static int clearsOpened(SeasonRow row) {
        var given = row.count(SeasonColumn.CLEARS_OPENED);
        return given == null ? Math.min(row.n(SeasonColumn.CLEAR), row.opened()) : given;
    }
}
