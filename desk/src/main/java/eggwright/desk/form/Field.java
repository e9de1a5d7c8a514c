package eggwright.desk.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** A field of a form: what it asks, what was typed, and what is to be mended. */
public sealed interface Field {
    String name();

    String label();

    /** Words under the label; empty where there are none. */
    String hint();

    /** What is to be mended; empty where nothing is. */
    String message();

    Field withMessage(String message);

    /** With what was typed under this name; unchanged where the field was not in what was typed. */
    Field filledFrom(Typed typed);

    /** The same field under another name. */
    Field named(String name);

    /** The same field in a row of a repeated one. */
    default Field inRow(String row) {
        return named(row + "." + name());
    }

    /** Whether anything was typed or chosen in it. */
    boolean isFilled();

    /** The id in the page. */
    default String id() {
        return "f-" + name().replace('.', '-');
    }

    /** The ids that describe it, for a screen reader. */
    default String describedBy() {
        var ids = new ArrayList<String>();
        if (!hint().isEmpty()) {
            ids.add(id() + "-hint");
        }
        if (!message().isEmpty()) {
            ids.add(id() + "-message");
        }
        return String.join(" ", ids);
    }

    default boolean isToBeMended() {
        return !message().isEmpty();
    }

    /** What a line of typing takes. */
    enum Kind {
        TEXT,
        /** A count: number pad. */
        WHOLE,
        /** A number, with its unit where it needs one, as {@code 99.5F}: full keys, no spelling help. */
        DECIMAL,
        DAY,
        /** A day and an hour of the farm's own clock. */
        MOMENT,
        /** Several lines. */
        REMARK
    }

    /** Whether a form can be kept without it. */
    enum Need {
        NEEDED,
        OPTIONAL
    }

    /**
     * One line of typing.
     *
     * @param unit shown beside it, as "eggs"; empty where there is none or where it is typed
     * @param value as typed
     * @param offers what is often typed, each with words that explain it; anything else may be typed as well
     */
    record Line(
            String name,
            String label,
            Kind kind,
            Need need,
            String unit,
            String hint,
            String message,
            String value,
            List<Choice.Option> offers)
            implements Field {
        public Line {
            offers = List.copyOf(offers);
        }

        public static Line text(String name, String label) {
            return of(name, label, Kind.TEXT);
        }

        public static Line whole(String name, String label, String unit) {
            return of(name, label, Kind.WHOLE).withUnit(unit);
        }

        /** A number whose unit is typed with it; the hint says so by example. */
        public static Line measure(String name, String label, String example) {
            return of(name, label, Kind.DECIMAL).withHint(example);
        }

        public static Line day(String name, String label) {
            return of(name, label, Kind.DAY);
        }

        public static Line moment(String name, String label) {
            return of(name, label, Kind.MOMENT);
        }

        public static Line remark(String name, String label) {
            return of(name, label, Kind.REMARK).optional();
        }

        private static Line of(String name, String label, Kind kind) {
            return new Line(name, label, kind, Need.NEEDED, "", "", "", "", List.of());
        }

        @Override
        public boolean isFilled() {
            return !value.isBlank();
        }

        public Line optional() {
            return new Line(name, label, kind, Need.OPTIONAL, unit, hint, message, value, offers);
        }

        public Line needed() {
            return new Line(name, label, kind, Need.NEEDED, unit, hint, message, value, offers);
        }

        public Line withUnit(String unit) {
            return new Line(name, label, kind, need, unit, hint, message, value, offers);
        }

        public Line withHint(String hint) {
            return new Line(name, label, kind, need, unit, hint, message, value, offers);
        }

        public Line withOffers(List<Choice.Option> offers) {
            return new Line(name, label, kind, need, unit, hint, message, value, offers);
        }

        public Line withValue(String value) {
            return new Line(name, label, kind, need, unit, hint, message, value, offers);
        }

        @Override
        public Line withMessage(String message) {
            return new Line(name, label, kind, need, unit, hint, message, value, offers);
        }

        @Override
        public Line filledFrom(Typed typed) {
            return typed.one(name).map(this::withValue).orElse(this);
        }

        @Override
        public Line named(String name) {
            return new Line(name, label, kind, need, unit, hint, message, value, offers);
        }
    }

    /** How a choice is laid out: few side by side, many in a list that opens. */
    enum Shape {
        RADIO,
        LIST
    }

    /**
     * One of several.
     *
     * @param value of the option chosen; empty where none is
     */
    record Choice(
            String name, String label, Shape shape, String hint, String message, String value, List<Option> options)
            implements Field {
        public Choice {
            options = List.copyOf(options);
        }

        /** One that may be chosen: its value in the form and its words. */
        public record Option(String value, String label) {}

        public static Choice radio(String name, String label, List<Option> options) {
            return new Choice(name, label, Shape.RADIO, "", "", "", options);
        }

        public static Choice list(String name, String label, List<Option> options) {
            return new Choice(name, label, Shape.LIST, "", "", "", options);
        }

        @Override
        public boolean isFilled() {
            return !value.isEmpty();
        }

        public Choice withHint(String hint) {
            return new Choice(name, label, shape, hint, message, value, options);
        }

        public Choice withValue(String value) {
            return new Choice(name, label, shape, hint, message, value, options);
        }

        @Override
        public Choice withMessage(String message) {
            return new Choice(name, label, shape, hint, message, value, options);
        }

        @Override
        public Choice filledFrom(Typed typed) {
            return typed.one(name).map(this::withValue).orElse(this);
        }

        @Override
        public Choice named(String name) {
            return new Choice(name, label, shape, hint, message, value, options);
        }
    }

    /**
     * Fields that are seldom needed, behind one touch. Open where one of them holds anything or is to be mended.
     *
     * @param label words of the touch
     */
    record Fold(String name, String label, List<Field> fields) implements Field {
        public Fold {
            fields = List.copyOf(fields);
        }

        @Override
        public String hint() {
            return "";
        }

        @Override
        public String message() {
            return "";
        }

        /** Whether it is shown unfolded. */
        public boolean isOpen() {
            return fields.stream().anyMatch(f -> f.isToBeMended() || f.isFilled());
        }

        @Override
        public boolean isFilled() {
            return fields.stream().anyMatch(Field::isFilled);
        }

        @Override
        public Fold withMessage(String message) {
            return this;
        }

        @Override
        public Fold filledFrom(Typed typed) {
            return each(f -> f.filledFrom(typed));
        }

        @Override
        public Fold named(String name) {
            return new Fold(name, label, fields);
        }

        /** In a row: its fields belong to the row, as all others do. */
        @Override
        public Fold inRow(String row) {
            return new Fold(
                    row + "." + name,
                    label,
                    fields.stream().map(f -> f.inRow(row)).toList());
        }

        Fold each(UnaryOperator<Field> change) {
            return new Fold(name, label, fields.stream().map(change).toList());
        }
    }

    /**
     * The same fields again and again, as one tray after another. Fields of row 2 are named {@code tray.2.eggs}.
     *
     * @param rowLabel the word before a row's number, as "Tray"
     * @param more words of the button that adds rows
     * @param blank the fields of an empty row, by their short names
     * @param rows the rows shown, with their full names
     */
    record Rows(
            String name,
            String label,
            String rowLabel,
            String more,
            String hint,
            String message,
            List<Field> blank,
            List<List<Field>> rows)
            implements Field {
        private static final int ADDED_AT_ONCE = 5;

        public Rows {
            blank = List.copyOf(blank);
            rows = rows.stream().map(List::copyOf).toList();
        }

        public static Rows of(
                String name, String label, String rowLabel, String more, int rowCount, List<Field> blank) {
            return new Rows(name, label, rowLabel, more, "", "", blank, List.of()).withRowCount(rowCount);
        }

        @Override
        public boolean isFilled() {
            return rows.stream().anyMatch(row -> row.stream().anyMatch(Field::isFilled));
        }

        public Rows withHint(String hint) {
            return new Rows(name, label, rowLabel, more, hint, message, blank, rows);
        }

        @Override
        public Rows withMessage(String message) {
            return new Rows(name, label, rowLabel, more, hint, message, blank, rows);
        }

        /** Five more empty rows, up to as many as are read. */
        public Rows withMore() {
            return withRowCount(Math.max(rows.size(), Math.min(rows.size() + ADDED_AT_ONCE, Typed.MOST_ROWS)));
        }

        @Override
        public Rows filledFrom(Typed typed) {
            return withRowCount(Math.max(rows.size(), typed.rowCount(name))).eachField(f -> f.filledFrom(typed));
        }

        @Override
        public Rows named(String name) {
            return of(name, label, rowLabel, more, rows.size(), blank)
                    .withHint(hint)
                    .withMessage(message);
        }

        /** Whether one note takes no more rows. */
        public boolean isFull() {
            return rows.size() >= Typed.MOST_ROWS;
        }

        Rows eachField(UnaryOperator<Field> change) {
            return withRows(
                    rows.stream().map(row -> row.stream().map(change).toList()).toList());
        }

        private Rows withRowCount(int count) {
            var all = new ArrayList<>(rows);
            IntStream.range(rows.size(), count).mapToObj(this::emptyRow).forEach(all::add);
            return withRows(all);
        }

        private List<Field> emptyRow(int number) {
            return blank.stream().map(f -> f.inRow(Typed.rowName(name, number))).toList();
        }

        private Rows withRows(List<List<Field>> rows) {
            return new Rows(name, label, rowLabel, more, hint, message, blank, rows);
        }
    }
}
