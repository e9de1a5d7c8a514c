package eggwright.rates;

import eggwright.book.picture.Parcel;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * By what rates are grouped. Weeks are ISO 8601 weeks; lay week is that of the last lay date of the lot; storage days are
 * whole days from the last lay date to day 0; machine and section are those at setting.
 */
public enum Dimension {
    PEN("pen"),
    SET("set"),
    TRAY("tray"),
    MACHINE("machine"),
    SECTION("section"),
    LAY_WEEK("lay-week"),
    SET_WEEK("set-week"),
    STORAGE_DAYS("storage-days"),
    SPECIES("species");

    /** The key of eggs for which this was not recorded. */
    public static final String NOT_RECORDED = "not recorded";

    private final String word;

    Dimension(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The key of a parcel, as entered. */
    public String key(Parcel parcel) {
        var lot = parcel.lot();
        return switch (this) {
            case PEN -> text(lot.pen());
            case SET -> parcel.id().load().set().text();
            case TRAY -> parcel.id().load().tray().text();
            case MACHINE -> text(parcel.machine());
            case SECTION -> text(parcel.section());
            case LAY_WEEK -> lot.laidTo() == null ? NOT_RECORDED : week(lot.laidTo());
            case SET_WEEK -> week(parcel.setOn());
            case STORAGE_DAYS ->
                lot.laidTo() == null
                        ? NOT_RECORDED
                        : Long.toString(ChronoUnit.DAYS.between(lot.laidTo(), parcel.setOn()));
            case SPECIES -> lot.species().word();
        };
    }

    private static String text(@Nullable Object name) {
        return name == null ? NOT_RECORDED : name.toString();
    }

    private static String week(LocalDate day) {
        return String.format(
                Locale.ROOT,
                "%d-W%02d",
                day.get(IsoFields.WEEK_BASED_YEAR),
                day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }
}
