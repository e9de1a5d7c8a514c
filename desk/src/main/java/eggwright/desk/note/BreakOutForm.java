package eggwright.desk.note;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.ClassCount;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Need;
import eggwright.trade.BreakOutClass;
import eggwright.trade.caution.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Map;

/** Eggs opened at the bench. */
final class BreakOutForm {
    private BreakOutForm() {}

    static EntryForm of() {
        return EntryForm.of(
                "broken-out",
                Shelf.LAMP,
                BrokenOut.class,
                asks -> {
                    var fields = new ArrayList<Field>();
                    fields.add(asks.known().sets("set"));
                    fields.add(asks.known().tray("tray", "set").optional());
                    for (var what : BreakOutClass.values()) {
                        fields.add(asks.eggs("class_" + what.word()));
                    }
                    fields.add(asks.eggs("opened").optional());
                    fields.add(asks.eggs("clears_opened").optional());
                    fields.add(asks.fold(
                            "finer",
                            asks.known().pens(Need.OPTIONAL),
                            asks.text("basket").optional(),
                            asks.text("look").optional()));
                    return fields;
                },
                r -> {
                    var classes = new EnumMap<BreakOutClass, Integer>(BreakOutClass.class);
                    for (var what : BreakOutClass.values()) {
                        int eggs = r.wholeOrNought("class_" + what.word());
                        if (eggs > 0) {
                            classes.put(what, eggs);
                        }
                    }
                    int named = classes.values().stream()
                            .mapToInt(Integer::intValue)
                            .sum();
                    var opened = r.wholeOrNone("opened");
                    if (opened == null && named == 0) {
                        r.mend("opened", "breakOut.nothing");
                    }
                    return new BrokenOut(
                            Scopes.read(r),
                            opened == null ? named : opened,
                            r.wholeOrNone("clears_opened"),
                            classes.entrySet().stream()
                                    .map(c -> new ClassCount(c.getKey(), c.getValue()))
                                    .toList());
                },
                it -> {
                    var written = Scopes.write(new Written(), it.scope())
                            // Left empty it is the sum of the classes, and follows when one of them is mended.
                            .whole("opened", it.opened() == sum(it) ? null : it.opened())
                            .whole("clears_opened", it.clearsOpened());
                    for (var what : Map.copyOf(counts(it)).entrySet()) {
                        written.whole("class_" + what.getKey().word(), what.getValue());
                    }
                    return written;
                },
                Place.ROTTEN_EGGS,
                Place.BREAK_OUT,
                Place.HUMANE_KILLING,
                Place.DISPOSAL);
    }

    private static Map<BreakOutClass, Integer> counts(BrokenOut it) {
        var counts = new EnumMap<BreakOutClass, Integer>(BreakOutClass.class);
        it.classes().forEach(c -> counts.merge(c.what(), c.eggs(), Integer::sum));
        return counts;
    }

    private static int sum(BrokenOut it) {
        return it.classes().stream().mapToInt(ClassCount::eggs).sum();
    }
}
