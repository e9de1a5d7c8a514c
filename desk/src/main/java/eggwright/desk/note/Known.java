package eggwright.desk.note;

import eggwright.book.entry.MachineKind;
import eggwright.book.name.Name;
import eggwright.book.name.SetName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.SetPicture;
import eggwright.book.picture.Stored;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Choice.Option;
import eggwright.desk.form.Field.Line;
import eggwright.desk.form.Typed;
import eggwright.trade.Species;
import eggwright.units.OutOfRange;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Fields that the book has an answer to: its pens, sets, machines, species, buyers, offered or filled in. */
final class Known {
    private static final Pattern LAST_NUMBER = Pattern.compile("(.*?)(\\d{1,6})");

    private final Around around;
    private final Asks asks;

    Known(Around around, Asks asks) {
        this.around = around;
        this.asks = asks;
    }

    /** Names already in the book, offered; empty first, for where it may be absent. */
    Field names(String name, Collection<? extends Name> known, Field.Need need) {
        if (known.isEmpty()) {
            var line = asks.text(name);
            return need == Field.Need.OPTIONAL ? line.optional() : line;
        }
        var options = new ArrayList<Option>();
        options.add(new Option("", around.say(need == Field.Need.OPTIONAL ? "choice.none" : "choice.choose")));
        for (var each : known) {
            options.add(new Option(each.text(), each.text()));
        }
        return Field.Choice.list(name, asks.label(name), options)
                .withHint(asks.hint(name))
                .withValue(around.asked().text(name));
    }

    Field pens(Field.Need need) {
        return names("pen", around.picture().pens().keySet(), need);
    }

    /** The set that a link named; empty where there is none of that name. */
    private Optional<SetPicture> set(String asked) {
        try {
            return around.picture().set(new SetName(asked));
        } catch (OutOfRange noName) {
            return Optional.empty();
        }
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

    /** A tray; those of the set that the link named are offered with the eggs they should hold. */
    Line tray(String name, String setField) {
        var asked = around.asked().text(setField);
        var trays = asked.isEmpty()
                ? List.<Option>of()
                : set(asked).stream()
                        .flatMap(s -> s.loads().values().stream())
                        .filter(load -> load.phase() != LoadPhase.OUT)
                        .map(load -> new Option(
                                load.ref().tray().text(),
                                load.eggsNow() == null
                                        ? around.say("tray.together")
                                        : around.say("tray.eggs", load.eggsNow())))
                        .toList();
        return asks.text(name).withOffers(trays);
    }

    Field anyMachine(Field.Need need) {
        return names("machine", around.picture().machines().keySet(), need);
    }

    /** The farm's usual species first: the one most pens hold. */
    Field species() {
        var options = new ArrayList<Option>();
        for (var species : Species.values()) {
            options.add(new Option(species.word(), around.words().species(species)));
        }
        var asked = around.asked().text("species");
        return Field.Choice.list("species", asks.label("species"), options)
                .withHint(asks.hint("species"))
                .withValue(asked.isEmpty() ? usual().word() : asked);
    }

    /** That of the pen, unless another is chosen; where the book knows no pen's species, the usual one. */
    Field speciesOfPen() {
        var known = around.picture().pens().values().stream().anyMatch(p -> p.species() != null);
        if (!known) {
            return species();
        }
        var options = new ArrayList<Option>();
        options.add(new Option("", around.say("choice.ofPen")));
        for (var species : Species.values()) {
            options.add(new Option(species.word(), around.words().species(species)));
        }
        return Field.Choice.list("species", asks.label("species"), options)
                .withHint(asks.hint("species"))
                .withValue(around.asked().text("species"));
    }

    /** A lay date; those of the eggs in the egg room are offered. */
    Line layDate(String name, Function<Stored, @Nullable LocalDate> of) {
        var eggs = new TreeMap<LocalDate, TreeMap<String, Integer>>();
        for (var shelf : around.picture().eggRoom().values()) {
            var pen = shelf.key().pen();
            var whose =
                    pen == null ? around.words().species(shelf.key().species()) : around.say("offer.pen", pen.text());
            for (var stored : shelf.stored()) {
                var day = of.apply(stored);
                if (day != null) {
                    eggs.computeIfAbsent(day, d -> new TreeMap<>()).merge(whose, stored.eggs(), Integer::sum);
                }
            }
        }
        var offers = new ArrayList<Option>();
        eggs.forEach((day, pens) -> offers.add(new Option(
                day.toString(),
                pens.entrySet().stream()
                        .map(p -> around.say("offer.eggs", p.getKey(), p.getValue()))
                        .collect(Collectors.joining(", ")))));
        return Line.day(name, asks.label(name)).optional().withOffers(offers);
    }

    /** In a row: only where it is not the species of the whole set. */
    Field otherSpecies() {
        var options = new ArrayList<Option>();
        options.add(new Option("", around.say("choice.asAbove")));
        for (var species : Species.values()) {
            options.add(new Option(species.word(), around.words().species(species)));
        }
        return Field.Choice.list("other_species", asks.label("other_species"), options);
    }

    Species usual() {
        return around.picture().pens().values().stream()
                .filter(p -> p.species() != null && p.closedOn() == null)
                .map(p -> p.species())
                .collect(Collectors.groupingBy(s -> s, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(Species.PHEASANT);
    }

    List<SetName> setNames() {
        return around.picture().sets().keySet().stream()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    Field orders(Field.Need need) {
        return names("order", around.picture().orders().keySet(), need);
    }

    /** A buyer's number; those with a name are offered by it. */
    Line buyer() {
        return asks.text("buyer")
                .withOffers(around.buyers().stream()
                        .map(b -> new Option(b.number().text(), b.name()))
                        .toList());
    }

    /** The name of the newest set with its last number counted on, as 27-8 after 27-7; free to be changed. */
    Line nextSet() {
        var asked = around.asked().text("set");
        return asks.text("set")
                .withHint(around.say("hint.new_set"))
                .withValue(asked.isEmpty() ? afterTheNewest() : asked);
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
                : set(asked).stream()
                        .flatMap(s -> s.loads().values().stream())
                        .filter(l -> l.phase() == LoadPhase.IN_SETTER)
                        .map(l -> l.ref().tray().text())
                        .filter(tray -> only.isEmpty() || tray.equals(only))
                        .toList();
        var values = new HashMap<String, String>();
        for (int i = 0; i < trays.size(); i++) {
            values.put("load." + i + ".set", asked);
            values.put("load." + i + ".tray", trays.get(i));
        }
        return asks.rows("load", Math.max(4, trays.size()), blank).filledFrom(Typed.of(values));
    }
}
