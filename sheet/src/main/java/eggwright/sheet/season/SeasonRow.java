package eggwright.sheet.season;

import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One row of a season, read.
 *
 * @param number as a spreadsheet numbers it; 0 for a row that the book holds already
 * @param dates those that were given
 * @param counts those that were given
 */
record SeasonRow(
        int number,
        SetName set,
        TrayName tray,
        Species species,
        @Nullable PenName pen,
        @Nullable MachineName machine,
        @Nullable SectionName section,
        Map<SeasonColumn, LocalDate> dates,
        Map<SeasonColumn, Integer> counts) {
    /** The tray that stands for the whole set. */
    static final TrayName ALL = new TrayName("all");

    SeasonRow {
        var sortedDates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        sortedDates.putAll(dates);
        dates = sortedDates;
        var sortedCounts = new EnumMap<SeasonColumn, Integer>(SeasonColumn.class);
        sortedCounts.putAll(counts);
        counts = sortedCounts;
    }

    boolean isAll() {
        return tray.equals(ALL);
    }

    SeasonRow with(Map<SeasonColumn, LocalDate> otherDates) {
        return new SeasonRow(number, set, tray, species, pen, machine, section, otherDates, counts);
    }

    LocalDate setOn() {
        var on = dates.get(SeasonColumn.SET_ON);
        if (on == null) {
            throw new IllegalStateException("A row without set_on was let through");
        }
        return on;
    }

    int eggs() {
        return n(SeasonColumn.EGGS);
    }

    @Nullable LocalDate date(SeasonColumn column) {
        return dates.get(column);
    }

    @Nullable Integer count(SeasonColumn column) {
        return counts.get(column);
    }

    /** The count, and 0 where none was recorded. */
    int n(SeasonColumn column) {
        return counts.getOrDefault(column, 0);
    }

    int sum(List<SeasonColumn> columns) {
        int sum = 0;
        for (var column : columns) {
            sum += n(column);
        }
        return sum;
    }

    boolean hasAny(List<SeasonColumn> columns) {
        return columns.stream().anyMatch(counts::containsKey);
    }

    /** Every egg opened: the sum of the classes where {@code opened} was left empty. */
    int opened() {
        var opened = counts.get(SeasonColumn.OPENED);
        return opened == null ? sum(SeasonColumn.CLASSES) : opened;
    }

    /** The value as it would stand in the file; empty where not recorded. */
    String shown(SeasonColumn column) {
        return switch (column.holds()) {
            case DATE -> dates.containsKey(column) ? String.valueOf(dates.get(column)) : "";
            case COUNT -> counts.containsKey(column) ? String.valueOf(counts.get(column)) : "";
            case SPECIES -> species.word();
            case NAME -> name(column);
        };
    }

    private String name(SeasonColumn column) {
        var name = switch (column) {
            case SET -> set;
            case TRAY -> tray;
            case PEN -> pen;
            case MACHINE -> machine;
            case SECTION -> section;
            default -> throw new IllegalArgumentException(column.word() + " holds no name");
        };
        return name == null ? "" : name.text();
    }
}
