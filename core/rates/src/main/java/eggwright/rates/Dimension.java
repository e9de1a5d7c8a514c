package eggwright.rates;

import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.Picture;
import eggwright.book.picture.Place;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;

/**
 * By what rates are grouped. Keys are the words as entered; weeks are ISO 8601 weeks such as "2027-W14".
 *
 * <p>A lot laid over several dates stands at the middle of them, half days counted as older. A load that walked between
 * sections or setters is keyed by them in the order of its stays, joined by " &gt; "; the hatcher is no stay. Eggs moved
 * to another load keep the keys of the load they were set in.
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
    SPECIES("species"),
    /** Everything together. */
    NONE("none");

    /** The key of eggs for which this was not recorded. */
    public static final String NOT_RECORDED = "not recorded";

    /** The key of everything together. */
    public static final String ALL = "all";

    private static final String THEN = " > ";

    private final String word;

    Dimension(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** What gives the key of each parcel of a picture. */
    public Function<Parcel, String> keys(Picture picture) {
        return switch (this) {
            case PEN -> parcel -> text(parcel.lot().pen());
            case SET -> parcel -> parcel.id().load().set().text();
            case TRAY -> parcel -> parcel.id().load().tray().text();
            case MACHINE -> stays(picture, Place::machine, Parcel::machine);
            case SECTION -> stays(picture, Place::section, Parcel::section);
            case LAY_WEEK ->
                parcel -> ofStorage(parcel, days -> week(parcel.setOn().minusDays(days)));
            case SET_WEEK -> parcel -> week(parcel.setOn());
            case STORAGE_DAYS -> parcel -> ofStorage(parcel, Long::toString);
            case SPECIES -> parcel -> parcel.lot().species().word();
            case NONE -> parcel -> ALL;
        };
    }

    /**
     * Whole days from lay to set: the mean of the longest and the shortest that the lay dates allow, half days up. Below
     * 0 where the dates contradict each other; empty where no lay date was recorded.
     */
    public static OptionalLong storageDays(Parcel parcel) {
        var to = parcel.lot().laidTo();
        var from = parcel.lot().laidFrom() == null ? to : parcel.lot().laidFrom();
        var last = to == null ? from : to;
        if (from == null || last == null) {
            return OptionalLong.empty();
        }
        long longest = ChronoUnit.DAYS.between(from, parcel.setOn());
        long shortest = ChronoUnit.DAYS.between(last, parcel.setOn());
        return OptionalLong.of(Math.floorDiv(longest + shortest + 1, 2));
    }

    private static String ofStorage(Parcel parcel, LongFunction<String> key) {
        var days = storageDays(parcel);
        return days.isPresent() ? key.apply(days.getAsLong()) : NOT_RECORDED;
    }

    /** The ISO 8601 week of a day: "2027-W14". */
    public static String week(LocalDate day) {
        return String.format(
                Locale.ROOT,
                "%d-W%02d",
                day.get(IsoFields.WEEK_BASED_YEAR),
                day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }

    private static String text(@Nullable Object name) {
        return name == null ? NOT_RECORDED : name.toString();
    }

    private static Function<Parcel, String> stays(
            Picture picture, Function<Place, @Nullable Object> of, Function<Parcel, @Nullable Object> atSetting) {
        Map<LoadRef, String> walked = new HashMap<>();
        for (var set : picture.sets().values()) {
            for (var load : set.loads().values()) {
                var stays = new ArrayList<String>();
                for (var place : load.places()) {
                    var stay = of.apply(place);
                    var after = load.transferredAt();
                    if (stay != null
                            && (after == null || place.from().isBefore(after))
                            && (stays.isEmpty() || !stays.getLast().equals(stay.toString()))) {
                        stays.add(stay.toString());
                    }
                }
                if (!stays.isEmpty()) {
                    walked.put(load.ref(), String.join(THEN, stays));
                }
            }
        }
        return parcel -> walked.getOrDefault(parcel.id().load(), text(atSetting.apply(parcel)));
    }
}
