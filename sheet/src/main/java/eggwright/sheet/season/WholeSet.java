package eggwright.sheet.season;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a row of a tray and the row of its whole set both say is kept once. Keepers repeat the date of the hatch in every
 * row when the chicks were counted together; a tray whose row has the date and no chick was not taken off on its own.
 */
final class WholeSet {
    private WholeSet() {}

    /** A tray's row without what is counted for the whole set. */
    static SeasonRow withoutRepeated(SeasonRow tray, @Nullable SeasonRow whole) {
        if (whole == null) {
            return tray;
        }
        var dates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        dates.putAll(tray.dates());
        if (tray.sum(SeasonColumn.TAKE_OFF) == 0 && whole.date(SeasonColumn.HATCHED_ON) != null) {
            dates.remove(SeasonColumn.HATCHED_ON);
        }
        if (tray.count(SeasonColumn.TRANSFERRED) == null && whole.date(SeasonColumn.TRANSFERRED_ON) != null) {
            dates.remove(SeasonColumn.TRANSFERRED_ON);
        }
        return with(tray, dates);
    }

    /** The whole set's row without a date that only repeats those of the trays. */
    static SeasonRow withoutRepeated(SeasonRow whole, SetRows rows) {
        var dates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        dates.putAll(whole.dates());
        if (whole.sum(SeasonColumn.TAKE_OFF) == 0 && any(rows, SeasonColumn.TAKE_OFF)) {
            dates.remove(SeasonColumn.HATCHED_ON);
        }
        if (any(rows, List.of(SeasonColumn.TRANSFERRED))) {
            dates.remove(SeasonColumn.TRANSFERRED_ON);
        }
        if (whole.sum(SeasonColumn.LAMP) == 0 && any(rows, SeasonColumn.LAMP)) {
            dates.remove(SeasonColumn.CANDLED_ON);
        }
        return with(whole, dates);
    }

    private static boolean any(SetRows rows, List<SeasonColumn> columns) {
        return rows.trays().stream().anyMatch(r -> r.hasAny(columns));
    }

    private static SeasonRow with(SeasonRow row, EnumMap<SeasonColumn, LocalDate> dates) {
        return new SeasonRow(
                row.number(),
                row.set(),
                row.tray(),
                row.species(),
                row.pen(),
                row.machine(),
                row.section(),
                dates,
                row.counts());
    }
}
