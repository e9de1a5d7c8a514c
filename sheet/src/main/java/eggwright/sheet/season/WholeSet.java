package eggwright.sheet.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What a row of a tray and the row of its whole set both say is kept once. Keepers repeat the date of the hatch in every
 * row when the chicks were counted together; a tray whose row has the date and no chick was not taken off on its own.
 */
final class WholeSet {
    private WholeSet() {}

    /** A tray's row without the dates of what was counted for the whole set. */
    static SeasonRow withoutRepeated(SeasonRow tray, SetRows rows) {
        var whole = rows.whole();
        var dates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        dates.putAll(tray.dates());
        if (isTakenOffWhole(whole, rows) && tray.sum(SeasonColumn.TAKE_OFF) == 0) {
            dates.remove(SeasonColumn.HATCHED_ON);
        }
        if (isTransferredWhole(whole, rows)) {
            dates.remove(SeasonColumn.TRANSFERRED_ON);
        }
        return tray.with(dates);
    }

    /** The whole set's row without the dates of what was counted by tray. */
    static SeasonRow byItself(SeasonRow whole, SetRows rows) {
        var dates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        dates.putAll(whole.dates());
        if (!isTakenOffWhole(whole, rows)) {
            dates.remove(SeasonColumn.HATCHED_ON);
        }
        if (!isTransferredWhole(whole, rows)) {
            dates.remove(SeasonColumn.TRANSFERRED_ON);
        }
        if (whole.sum(SeasonColumn.LAMP) == 0 && rows.trays().stream().anyMatch(r -> r.hasAny(SeasonColumn.LAMP))) {
            dates.remove(SeasonColumn.CANDLED_ON);
        }
        return whole.with(dates);
    }

    /** On which date the eggs of a row were opened: after the take-off, where there was one. */
    static LocalDate openedOn(SeasonRow row, SetRows rows) {
        if (row.isAll() && rows.whole() != null) {
            var added = rows.added(row);
            var own = Dates.ofOpening(row, added.sum(SeasonColumn.REMOVED));
            return row.date(SeasonColumn.HATCHED_ON) == null ? latest(own, rows.trays()) : own;
        }
        var whole = rows.whole();
        var own = Dates.ofOpening(row, row.sum(SeasonColumn.REMOVED));
        return row.date(SeasonColumn.HATCHED_ON) == null
                        && whole != null
                        && isTakenOffWhole(whole, rows)
                        && row.opened() > row.sum(SeasonColumn.REMOVED)
                ? latest(own, List.of(whole))
                : own;
    }

    /** The last take-off of these rows, or {@code otherwise} where none was taken off. */
    private static LocalDate latest(LocalDate otherwise, List<SeasonRow> rows) {
        return rows.stream()
                .map(r -> r.date(SeasonColumn.HATCHED_ON))
                .filter(Objects::nonNull)
                .max(LocalDate::compareTo)
                .orElse(otherwise);
    }

    private static boolean isTakenOffWhole(@Nullable SeasonRow whole, SetRows rows) {
        return whole != null
                && whole.date(SeasonColumn.HATCHED_ON) != null
                && (whole.sum(SeasonColumn.TAKE_OFF) > 0
                        || rows.trays().stream().allMatch(r -> r.sum(SeasonColumn.TAKE_OFF) == 0));
    }

    private static boolean isTransferredWhole(@Nullable SeasonRow whole, SetRows rows) {
        return whole != null
                && whole.date(SeasonColumn.TRANSFERRED_ON) != null
                && rows.trays().stream().allMatch(r -> r.count(SeasonColumn.TRANSFERRED) == null);
    }
}
