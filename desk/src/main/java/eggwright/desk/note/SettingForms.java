package eggwright.desk.note;

import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.Weighed;
import eggwright.book.entry.WeighedWhat;
import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import eggwright.units.Mass;
import java.util.List;

/** Trays into the heat, and what happens to them there. */
final class SettingForms {
    static final List<EntryForm> ALL = List.of(SetForm.of(), moved(), placed(), weighed());

    private SettingForms() {}

    private static EntryForm moved() {
        return EntryForm.of(
                "eggs-moved",
                Shelf.SETTING,
                EggsMoved.class,
                asks -> List.of(
                        asks.known().sets("from_set"),
                        asks.known().tray("from_tray", "from_set"),
                        asks.known().pens(Need.OPTIONAL),
                        asks.eggs("eggs").optional(),
                        asks.known().names("to_set", asks.known().setNames(), Need.OPTIONAL),
                        asks.known().tray("to_tray", "from_set"),
                        asks.known().machines("machine", MachineKind.SETTER, Need.OPTIONAL),
                        asks.text("section").optional()),
                r -> {
                    var from = r.name("from_set", SetName::new);
                    var to = r.nameOrNone("to_set", SetName::new);
                    return new EggsMoved(
                            from,
                            r.name("from_tray", TrayName::new),
                            r.nameOrNone("pen", PenName::new),
                            r.wholeOrNone("eggs"),
                            to == null ? from : to,
                            r.name("to_tray", TrayName::new),
                            r.nameOrNone("machine", MachineName::new),
                            r.nameOrNone("section", SectionName::new));
                },
                it -> new Written()
                        .name("from_set", it.fromSet())
                        .name("from_tray", it.fromTray())
                        .name("pen", it.pen())
                        .whole("eggs", it.eggs())
                        .name("to_set", it.toSet())
                        .name("to_tray", it.toTray())
                        .name("machine", it.machine())
                        .name("section", it.section()),
                Place.ROTTEN_EGGS);
    }

    private static EntryForm placed() {
        return EntryForm.of(
                "load-placed",
                Shelf.SETTING,
                LoadPlaced.class,
                asks -> List.of(
                        asks.known().sets("set"),
                        asks.text("tray"),
                        asks.known().machines("machine", MachineKind.SETTER, Need.NEEDED),
                        asks.text("section").optional(),
                        asks.text("position").optional()),
                r -> new LoadPlaced(
                        r.name("set", SetName::new),
                        r.name("tray", TrayName::new),
                        r.name("machine", MachineName::new),
                        r.nameOrNone("section", SectionName::new),
                        r.isEmpty("position") ? null : r.text("position")),
                it -> new Written()
                        .name("set", it.set())
                        .name("tray", it.tray())
                        .name("machine", it.machine())
                        .name("section", it.section())
                        .text("position", it.position()));
    }

    private static EntryForm weighed() {
        return EntryForm.of(
                "weighed",
                Shelf.SETTING,
                Weighed.class,
                asks -> List.<Field>of(
                        asks.known().sets("set"),
                        asks.text("tray"),
                        asks.choice("what", WeighedWhat.class, WeighedWhat.WHOLE_TRAY),
                        asks.measure("gross"),
                        asks.measure("tare").optional(),
                        asks.eggs("eggs")),
                r -> {
                    var gross = r.measureOrNone("gross", Mass::parse);
                    if (r.isEmpty("gross")) {
                        r.mend("gross", "reader.needed");
                    }
                    return new Weighed(
                            r.name("set", SetName::new),
                            r.name("tray", TrayName::new),
                            r.choice("what", WeighedWhat.class),
                            gross == null ? Mass.ofGrams(0) : gross,
                            r.measureOrNone("tare", Mass::parse),
                            r.whole("eggs"));
                },
                it -> new Written()
                        .name("set", it.set())
                        .name("tray", it.tray())
                        .choice("what", it.what())
                        .typed("gross", it.gross())
                        .typed("tare", it.tare())
                        .whole("eggs", it.eggs()));
    }
}
