package eggwright.desk.note;

import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Choice.Option;
import eggwright.desk.form.Field.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Fields that many forms share, worded once, filled from what the link said. */
final class Asks {
    private final Around around;

    Asks(Around around) {
        this.around = around;
    }

    /** In a form: it was seen, and in order. */
    static final String IN_ORDER = "in_order";

    /** Fields that the book has an answer to. */
    Known known() {
        return new Known(around, this);
    }

    String today() {
        return around.now().toLocalDate().toString();
    }

    String label(String name) {
        return around.say("field." + name);
    }

    String hint(String name) {
        var key = "hint." + name;
        return around.words().knows(key) ? around.say(key) : "";
    }

    private Line line(Line line, String name) {
        return line.withHint(hint(name)).withValue(around.asked().text(name));
    }

    Line text(String name) {
        return line(Line.text(name, label(name)), name);
    }

    Line eggs(String name) {
        return line(Line.whole(name, label(name), around.say("unit.eggs")), name);
    }

    Line whole(String name, String unitKey) {
        return line(Line.whole(name, label(name), around.say("unit." + unitKey)), name);
    }

    Line measure(String name) {
        return line(Line.measure(name, label(name), hint(name)), name);
    }

    Line day(String name) {
        return line(Line.day(name, label(name)), name);
    }

    Line moment(String name) {
        return line(Line.moment(name, label(name)), name);
    }

    Line remark(String name) {
        return line(Line.remark(name, label(name)), name);
    }

    /** Seldom needed: behind one touch. */
    Field fold(String name, Field... fields) {
        return new Field.Fold("fold_" + name, around.say("fold." + name), List.of(fields));
    }

    /** Every constant of an enum, worded as {@code choice.<name>.<constant>}. */
    <E extends Enum<E>> Field choice(String name, Class<E> of, E usual) {
        var asked = around.asked().text(name);
        return Field.Choice.radio(name, label(name), options(name, of))
                .withHint(hint(name))
                .withValue(asked.isEmpty() ? word(usual) : asked);
    }

    <E extends Enum<E>> List<Option> options(String name, Class<E> of) {
        var options = new ArrayList<Option>();
        for (var value : of.getEnumConstants()) {
            options.add(new Option(word(value), around.say("choice." + name + "." + word(value))));
        }
        return options;
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    /** A field of a row: no hint, nothing offered by the link. */
    Line plain(String name) {
        return Line.text(name, label(name));
    }

    Line plainEggs(String name) {
        return Line.whole(name, label(name), around.say("unit.eggs"));
    }

    /** A field as it stands in a row: without its hint. */
    Field bare(Field field) {
        return switch (field) {
            case Line line -> line.withHint("");
            case Field.Choice choice -> choice.withHint("");
            case Field.Fold fold -> fold;
            case Field.Rows rows -> rows.withHint("");
        };
    }

    /** Every constant of an enum in a list that opens, none chosen. */
    <E extends Enum<E>> Field list(String name, Class<E> of) {
        return Field.Choice.list(name, label(name), options(name, of));
    }

    /** The same, with none of them as a choice of its own. */
    <E extends Enum<E>> Field listOrNone(String name, Class<E> of) {
        var all = new ArrayList<Option>();
        all.add(new Option("", around.say("choice.none")));
        all.addAll(options(name, of));
        return Field.Choice.list(name, label(name), all)
                .withHint(hint(name))
                .withValue(around.asked().text(name));
    }

    Field seen(String name) {
        return Field.Choice.radio(
                        name,
                        label(name),
                        List.of(
                                new Option(IN_ORDER, around.say("choice.in_order")),
                                new Option("", around.say("choice.not_seen"))))
                .withValue("");
    }

    Field weekdays(String name) {
        var options = new ArrayList<Option>();
        options.add(new Option("", around.say("choice.none")));
        for (var day : java.time.DayOfWeek.values()) {
            options.add(new Option(
                    word(day),
                    day.getDisplayName(
                            java.time.format.TextStyle.FULL, around.words().language())));
        }
        return Field.Choice.list(name, label(name), options)
                .withHint(hint(name))
                .withValue(around.asked().text(name));
    }

    Field profileFields() {
        var options = new ArrayList<Option>();
        for (var field : eggwright.trade.ProfileField.values()) {
            options.add(new Option(field.word(), around.words().field(field)));
        }
        return Field.Choice.list("profile_field", label("profile_field"), options)
                .withHint(hint("profile_field"))
                .withValue(around.asked().text("profile_field"));
    }

    Field rows(String name, int count, List<Field> blank) {
        return Field.Rows.of(name, label(name), around.say("row." + name), around.say("more." + name), count, blank)
                .withHint(hint(name));
    }
}
