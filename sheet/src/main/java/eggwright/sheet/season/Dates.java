package eggwright.sheet.season;

import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import org.jspecify.annotations.Nullable;

/**
 * Fills in the dates that a row leaves open although it gives counts, and says which are unusual. The rule, own choice:
 *
 * <ul>
 *   <li>counts at the lamp without {@code candled_on}: the species' first look that the day sheet asks for;
 *   <li>{@code transferred} without {@code transferred_on}: the species' day of transfer;
 *   <li>chicks without {@code hatched_on}: the species' period;
 *   <li>none of them before an earlier, or after a later date that the row gives.
 * </ul>
 */
final class Dates {
    /** Before this day the lamp hardly tells more than guessing does; own choice. */
    private static final int FIRST_USEFUL_LOOK = 3;

    /** How far from the custom a transfer, and how far outside the window a hatch, is called unusual; own choice. */
    private static final int TRANSFER_SLACK_DAYS = 4;

    private static final int HATCH_SLACK_DAYS = 2;

    private final Warnings warnings;

    Dates(Warnings warnings) {
        this.warnings = warnings;
    }

    SeasonRow filled(SeasonRow row) {
        var profile = SpeciesProfile.of(row.species());
        var dates = new EnumMap<SeasonColumn, LocalDate>(SeasonColumn.class);
        dates.putAll(row.dates());
        if (row.hasAny(SeasonColumn.LAMP)) {
            fill(
                    row,
                    dates,
                    SeasonColumn.CANDLED_ON,
                    profile.candlingDays().value().getFirst(),
                    "the look");
        } else if (dates.remove(SeasonColumn.CANDLED_ON) != null) {
            warnings.add(
                    row,
                    SeasonColumn.CANDLED_ON,
                    "a look without any count is not kept. Write 0 where nothing was found.");
        }
        if (row.counts().containsKey(SeasonColumn.TRANSFERRED)) {
            fill(row, dates, SeasonColumn.TRANSFERRED_ON, profile.transferDay().value(), "the transfer");
        }
        if (row.hasAny(SeasonColumn.TAKE_OFF)) {
            fill(row, dates, SeasonColumn.HATCHED_ON, profile.periodDays().value(), "the take-off");
        }
        return row.with(dates);
    }

    private void fill(
            SeasonRow row, EnumMap<SeasonColumn, LocalDate> dates, SeasonColumn column, double day, String what) {
        if (dates.containsKey(column)) {
            return;
        }
        var custom = row.setOn().plusDays(Math.round(day));
        var date = custom;
        for (var given : row.dates().entrySet()) {
            if (given.getKey().compareTo(column) > 0 && given.getValue().isBefore(date)) {
                date = given.getValue();
            }
        }
        for (var earlier : dates.entrySet()) {
            if (earlier.getKey().compareTo(column) < 0 && earlier.getValue().isAfter(date)) {
                date = earlier.getValue();
            }
        }
        dates.put(column, date);
        warnings.add(
                row,
                column,
                date.equals(custom)
                        ? "no date for " + what + ": day " + Math.round(day) + " is taken, the custom for "
                                + row.species().word() + "."
                        : "no date for " + what + ": " + date + " is taken, to fit the other dates of the row.");
    }

    /** On which date eggs were opened that were opened without a take-off. */
    static LocalDate ofOpening(SeasonRow filled, int removed) {
        var hatched = filled.date(SeasonColumn.HATCHED_ON);
        if (hatched != null) {
            return hatched;
        }
        var candled = filled.date(SeasonColumn.CANDLED_ON);
        if (candled != null && filled.opened() <= removed) {
            return candled;
        }
        var period = SpeciesProfile.of(filled.species()).periodDays().value();
        var date = filled.setOn().plusDays(Math.round(period));
        for (var given : filled.dates().values()) {
            date = given.isAfter(date) ? given : date;
        }
        return date;
    }

    /** Warns of dates that are possible but unusual for the species. */
    void warnOfUnusual(SeasonRow row) {
        var profile = SpeciesProfile.of(row.species());
        var word = row.species().word();
        var window = profile.hatchWindowDays().value();
        var transfer = profile.transferDay().value();
        unusual(
                row,
                SeasonColumn.CANDLED_ON,
                FIRST_USEFUL_LOOK,
                window.high(),
                "looks at " + word + " are taken from day " + FIRST_USEFUL_LOOK + " to the hatch on day "
                        + shown(window.high()));
        unusual(
                row,
                SeasonColumn.TRANSFERRED_ON,
                transfer - TRANSFER_SLACK_DAYS,
                transfer + TRANSFER_SLACK_DAYS,
                word + " is transferred on day " + shown(transfer));
        unusual(
                row,
                SeasonColumn.HATCHED_ON,
                window.low() - HATCH_SLACK_DAYS,
                window.high() + HATCH_SLACK_DAYS,
                word + " hatches from day " + shown(window.low()) + " to " + shown(window.high()));
        var laid = row.date(SeasonColumn.LAID_FROM);
        var limit = profile.storageLimitDays().value();
        if (laid != null && ChronoUnit.DAYS.between(laid, row.setOn()) > limit) {
            warnings.add(
                    row,
                    SeasonColumn.LAID_FROM,
                    "eggs were stored for " + ChronoUnit.DAYS.between(laid, row.setOn()) + " days; " + word
                            + " eggs keep for " + shown(limit) + ".");
        }
    }

    private void unusual(SeasonRow row, SeasonColumn column, double from, double to, String custom) {
        @Nullable LocalDate date = row.date(column);
        if (date == null) {
            return;
        }
        long day = ChronoUnit.DAYS.between(row.setOn(), date);
        if (day < from || day > to) {
            warnings.add(row, column, date + " is day " + day + "; " + custom + ". Kept as it stands.");
        }
    }

    private static String shown(double days) {
        return days == Math.rint(days) ? String.valueOf(Math.round(days)) : String.valueOf(days);
    }
}
