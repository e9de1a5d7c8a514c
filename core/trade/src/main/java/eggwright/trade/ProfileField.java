package eggwright.trade;

import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A line of a species profile; each can be overridden by a farm. */
public enum ProfileField {
    PERIOD_DAYS(Kind.DAYS, "incubation period"),
    PERIOD_RANGE_DAYS(Kind.DAYS_RANGE, "range of the period"),
    SETTER_TEMPERATURE(Kind.TEMPERATURE, "setter temperature, moving air"),
    SETTER_WET_BULB(Kind.TEMPERATURE_RANGE, "setter wet bulb"),
    SETTER_HUMIDITY(Kind.HUMIDITY_RANGE, "setter humidity"),
    HATCHER_TEMPERATURE(Kind.TEMPERATURE, "hatcher temperature"),
    HATCHER_WET_BULB(Kind.TEMPERATURE_RANGE, "hatcher wet bulb"),
    HATCHER_HUMIDITY(Kind.HUMIDITY_RANGE, "hatcher humidity"),
    CANDLING_DAYS(Kind.DAY_LIST, "looks on the day sheet"),
    CUSTOMARY_CANDLING_DAYS(Kind.DAY_LIST, "looks by the fuller custom"),
    LAST_TURN_DAY(Kind.DAYS, "last turn"),
    TRANSFER_DAY(Kind.DAYS, "transfer"),
    FIRST_PIP_DAY(Kind.DAYS, "first external pip"),
    HATCH_WINDOW_DAYS(Kind.DAYS_RANGE, "hatch window"),
    STORAGE_ADVISED_DAYS(Kind.DAYS, "storage, advised"),
    STORAGE_LIMIT_DAYS(Kind.DAYS, "storage, limit"),
    STORE_TEMPERATURE(Kind.TEMPERATURE_RANGE, "egg room temperature"),
    STORE_HUMIDITY(Kind.HUMIDITY_RANGE, "egg room humidity"),
    EGG_MASS(Kind.MASS, "fresh egg"),
    EGG_MASS_RANGE(Kind.MASS_RANGE, "fresh egg, from light to heavy");

    /** What is measured. */
    public enum Kind {
        DAYS("days, as 24 or 23.5"),
        DAYS_RANGE("days from and to, as 23-24"),
        DAY_LIST("days, as 7;14;21"),
        TEMPERATURE("a temperature, as 99.5F or 37.5C"),
        TEMPERATURE_RANGE("temperatures from and to, as 84F-86F"),
        HUMIDITY_RANGE("relative humidity from and to, as 50-55%"),
        MASS("a mass, as 31.2g or 1.1oz"),
        MASS_RANGE("masses from and to, as 26g-38g");

        private final String form;

        Kind(String form) {
            this.form = form;
        }

        /** How it is written, with an example. */
        public String form() {
            return form;
        }
    }

    private final Kind kind;
    private final String label;

    ProfileField(Kind kind, String label) {
        this.kind = kind;
        this.label = label;
    }

    /** The word of entries and files, as {@code period_days}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The words of pages and tables. */
    public String label() {
        return label;
    }

    public Kind kind() {
        return kind;
    }

    public static Optional<ProfileField> ofWord(String word) {
        return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
    }

    /**
     * Reads a value of this field as a person writes it; {@link FieldValue#text} gives the same form back.
     *
     * @throws OutOfRange if the text is not of this field's kind, or outside what can be; the message says what is right
     */
    public FieldValue read(String text) {
        try {
            var plain = text.strip();
            return switch (kind) {
                case DAYS -> new FieldValue.Days(Double.parseDouble(plain));
                case DAYS_RANGE -> {
                    var ends = ends(plain);
                    yield new FieldValue.DaysRange(
                            new Range<>(Double.parseDouble(ends.low()), Double.parseDouble(ends.high())));
                }
                case DAY_LIST -> new FieldValue.DayList(dayList(plain));
                case TEMPERATURE -> new FieldValue.Degrees(Temperature.parse(plain));
                case TEMPERATURE_RANGE -> {
                    var ends = ends(plain);
                    yield new FieldValue.DegreesRange(
                            new Range<>(Temperature.parse(ends.low()), Temperature.parse(ends.high())));
                }
                case HUMIDITY_RANGE -> {
                    var ends = ends(plain);
                    yield new FieldValue.HumidityRange(new Range<>(humidity(ends.low()), humidity(ends.high())));
                }
                case MASS -> new FieldValue.Weight(Mass.parse(plain));
                case MASS_RANGE -> {
                    var ends = ends(plain);
                    yield new FieldValue.WeightRange(new Range<>(Mass.parse(ends.low()), Mass.parse(ends.high())));
                }
            };
        } catch (NumberFormatException e) {
            throw new OutOfRange(
                    ValueReason.NOT_OF_ITS_KIND,
                    "\"" + text + "\" is not a value of " + word() + ". Write " + kind.form() + ".",
                    text,
                    kind);
        } catch (OutOfRange e) {
            throw new OutOfRange(
                    ValueReason.NOT_OF_ITS_KIND,
                    "\"" + text + "\" is not a value of " + word() + ": " + e.getMessage() + ". Write " + kind.form()
                            + ".",
                    text,
                    kind);
        }
    }

    /** A single figure is a range from itself to itself. */
    private static Range<String> ends(String text) {
        int dash = text.indexOf('-', 1);
        return dash < 0 ? new Range<>(text, text) : new Range<>(text.substring(0, dash), text.substring(dash + 1));
    }

    private static Humidity humidity(String text) {
        return new Humidity(Double.parseDouble(text.replace("%", "").strip()));
    }

    private static List<Integer> dayList(String text) {
        var days = new ArrayList<Integer>();
        for (var day : text.split("[;,]", -1)) {
            days.add(Integer.parseInt(day.strip()));
        }
        return days;
    }
}
