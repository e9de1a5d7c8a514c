package eggwright.desk.note;

import eggwright.book.entry.MachineKind;
import eggwright.book.name.Name;
import eggwright.book.name.SetName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.SetPicture;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Choice.Option;
import eggwright.desk.form.Field.Line;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fields that many forms share, worded once, filled from what the link knew. */
final class Asks {
    private final Around around;

    Asks(Around around) {
        this.around = around;
    }

    /** In a form: it was seen, and in order. */
    static final String IN_ORDER = "in_order";

    private static final Pattern LAST_NUMBER = Pattern.compile("(.*?)(\\d{1,6})");

    String today() {
        return around.now().toLocalDate().toString();
    }

    String label(String name) {
        return around.say("field." + name);
    }

    private String hint(String name) {
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

    /** Names already in the book, offered; empty first, for where it may be absent. */
    Field names(String name, Collection<? extends Name> known, Field.Need need) {
        if (known.isEmpty()) {
            var line = text(name);
            return need == Field.Need.OPTIONAL ? line.optional() : line;
        }
        var options = new ArrayList<Option>();
        options.add(new Option("", around.say(need == Field.Need.OPTIONAL ? "choice.none" : "choice.choose")));
        for (var each : known) {
            options.add(new Option(each.text(), each.text()));
        }
        return Field.Choice.list(name, label(name), options)
                .withHint(hint(name))
                .withValue(around.asked().text(name));
    }

    Field pens(Field.Need need) {
        return names("pen", around.picture().pens().keySet(), need);
    }

    Field sets(String name) {
        return names(name, setNames(), Field.Need.NEEDED);
    }

    Field machines(String name, MachineKind kind, Field.Need need) {
        var fitting = around.picture().machines().values().stream()
                .filter(m -> m.does() == null || m.does() == kind || m.does() == MachineKind.SETTER_AND_HATCHER)
                .map(MachinePicture::machine)
                .toList();
        var field = names(name, fitting, need);
        // A farm with one machine of the kind uses that one.
        return fitting.size() == 1 && !field.isFilled()
                ? ((Field.Choice) field).withValue(fitting.getFirst().text())
                : field;
    }

    /** Seldom needed: behind one touch. */
    Field fold(String name, Field... fields) {
        return new Field.Fold("fold_" + name, around.say("fold." + name), List.of(fields));
    }

    /** A tray; those of the set that the link named are offered with the eggs they should hold. */
    Line tray(String name, String setField) {
        var asked = around.asked().text(setField);
        var trays = asked.isEmpty()
                ? List.<Option>of()
                : around.picture().set(new SetName(asked)).stream()
                        .flatMap(s -> s.loads().values().stream())
                        .filter(load -> load.phase() != LoadPhase.OUT)
                        .map(load -> new Option(
                                load.ref().tray().text(),
                                load.eggsNow() == null
                                        ? around.say("tray.together")
                                        : around.say("tray.eggs", load.eggsNow())))
                        .toList();
        return text(name).withOffers(trays);
    }

    Field anyMachine(Field.Need need) {
        return names("machine", around.picture().machines().keySet(), need);
    }

    /** The farm's usual species first: the one most pens hold. */
    Field species() {
        var options = new ArrayList<Option>();
        for (var species : Species.values()) {
            options.add(new Option(species.word(), species.word()));
        }
        var asked = around.asked().text("species");
        return Field.Choice.list("species", label("species"), options)
                .withHint(hint("species"))
                .withValue(asked.isEmpty() ? usual().word() : asked);
    }

    /** In a row: only where it is not the species of the whole set. */
    Field otherSpecies() {
        var options = new ArrayList<Option>();
        options.add(new Option("", around.say("choice.asAbove")));
        for (var species : Species.values()) {
            options.add(new Option(species.word(), species.word()));
        }
        return Field.Choice.list("other_species", label("other_species"), options);
    }

    Species usual() {
        return around.picture().pens().values().stream()
                .filter(p -> p.species() != null && p.closedOn() == null)
                .map(p -> p.species())
                .collect(java.util.stream.Collectors.groupingBy(s -> s, java.util.stream.Collectors.counting()))
                .entrySet()
                .stream()
                .max(java.util.Map.Entry.comparingByValue())
                .map(java.util.Map.Entry::getKey)
                .orElse(Species.PHEASANT);
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

    Field seen(String name) {
        return Field.Choice.radio(
                        name,
                        label(name),
                        List.of(
                                new Option(IN_ORDER, around.say("choice.in_order")),
                                new Option("", around.say("choice.not_seen"))))
                .withValue("");
    }

    List<SetName> setNames() {
        return around.picture().sets().keySet().stream()
                .sorted(java.util.Comparator.reverseOrder())
                .toList();
    }

    Field orders(Field.Need need) {
        return names("order", around.picture().orders().keySet(), need);
    }

    /** A buyer's number; those with a name are offered by it. */
    Line buyer() {
        return text("buyer")
                .withOffers(around.buyers().stream()
                        .map(b -> new Option(b.number().text(), b.name()))
                        .toList());
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
            options.add(new Option(field.word(), field.label()));
        }
        return Field.Choice.list("profile_field", label("profile_field"), options)
                .withHint(hint("profile_field"))
                .withValue(around.asked().text("profile_field"));
    }

    /** The name of the newest set with its last number counted on, as 27-8 after 27-7; free to be changed. */
    Line nextSet() {
        var asked = around.asked().text("set");
        return text("set").withHint(around.say("hint.new_set")).withValue(asked.isEmpty() ? afterTheNewest() : asked);
    }

    private String afterTheNewest() {
        var sets = around.picture().sets();
        var newest = sets.values().stream()
                .max(Comparator.comparing(SetPicture::startedAt).thenComparing(SetPicture::name))
                .map(set -> LAST_NUMBER.matcher(set.name().text()))
                .filter(Matcher::matches);
        var before = newest.map(m -> m.group(1)).orElse("");
        int next = newest.map(m -> Integer.parseInt(m.group(2)) + 1).orElse(1);
        while (sets.containsKey(new SetName(before + next))) {
            next++;
        }
        return before + next;
    }

    /** One row for each tray of the set that the link named, where it is still in the setter. */
    Field transferRows(List<Field> blank) {
        var asked = around.asked().text("set");
        var only = around.asked().text("tray");
        var trays = asked.isEmpty()
                ? List.<String>of()
                : around.picture().set(new SetName(asked)).stream()
                        .flatMap(s -> s.loads().values().stream())
                        .filter(l -> l.phase() == LoadPhase.IN_SETTER)
                        .map(l -> l.ref().tray().text())
                        .filter(tray -> only.isEmpty() || tray.equals(only))
                        .toList();
        var values = new java.util.HashMap<String, String>();
        for (int i = 0; i < trays.size(); i++) {
            values.put("load." + i + ".set", asked);
            values.put("load." + i + ".tray", trays.get(i));
        }
        return rows("load", Math.max(4, trays.size()), blank).filledFrom(eggwright.desk.form.Typed.of(values));
    }

    Field rows(String name, int count, List<Field> blank) {
        return Field.Rows.of(name, label(name), around.say("row." + name), around.say("more." + name), count, blank)
                .withHint(hint(name));
    }
}
