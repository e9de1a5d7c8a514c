package eggwright.desk.note;

import eggwright.book.entry.ClimateNoted;
import eggwright.book.entry.MachineAdded;
import eggwright.book.entry.MachineChanged;
import eggwright.book.entry.MachineCleaned;
import eggwright.book.entry.MachineKind;
import eggwright.book.entry.MachineUse;
import eggwright.book.entry.MachineUseChanged;
import eggwright.book.entry.RoundCheck;
import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import eggwright.units.Humidity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Setters and hatchers. */
final class MachineForms {
    static final List<EntryForm> ALL = List.of(climate(), cleaned(), used(), added(), changed());

    private MachineForms() {}

    private static EntryForm added() {
        return EntryForm.of(
                "machine-added",
                Shelf.MACHINES,
                MachineAdded.class,
                asks -> layout(asks, asks.text("machine")),
                r -> new MachineAdded(
                        r.name("machine", MachineName::new),
                        r.choice("does", MachineKind.class),
                        sections(r),
                        r.wholeOrNone("tray_places"),
                        r.text("note")),
                it -> written(it.machine(), it.does(), it.sections())
                        .whole("tray_places", it.trayPlaces())
                        .text("note", it.note()),
                Place.CURRENT_AND_WATER);
    }

    private static EntryForm changed() {
        return EntryForm.of(
                "machine-changed",
                Shelf.MACHINES,
                MachineChanged.class,
                asks -> layout(asks, asks.known().anyMachine(Need.NEEDED)),
                r -> new MachineChanged(
                        r.name("machine", MachineName::new),
                        r.choice("does", MachineKind.class),
                        sections(r),
                        r.wholeOrNone("tray_places"),
                        r.text("note")),
                it -> written(it.machine(), it.does(), it.sections())
                        .whole("tray_places", it.trayPlaces())
                        .text("note", it.note()));
    }

    private static List<Field> layout(Asks asks, Field machine) {
        return List.of(
                machine,
                asks.choice("does", MachineKind.class, MachineKind.SETTER),
                asks.text("sections").optional(),
                asks.whole("tray_places", "places").optional(),
                asks.remark("note"));
    }

    private static List<SectionName> sections(FormReader r) {
        return Arrays.stream(r.text("sections").split(","))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .map(SectionName::new)
                .toList();
    }

    private static Written written(MachineName machine, MachineKind does, List<SectionName> sections) {
        return new Written()
                .name("machine", machine)
                .choice("does", does)
                .text(
                        "sections",
                        String.join(
                                ", ", sections.stream().map(SectionName::text).toList()));
    }

    private static EntryForm cleaned() {
        return EntryForm.of(
                "machine-cleaned",
                Shelf.MACHINES,
                MachineCleaned.class,
                asks -> List.of(
                        asks.known().anyMachine(Need.NEEDED),
                        asks.text("section").optional(),
                        asks.text("how").optional()),
                r -> new MachineCleaned(
                        r.name("machine", MachineName::new), r.nameOrNone("section", SectionName::new), r.text("how")),
                it -> new Written()
                        .name("machine", it.machine())
                        .name("section", it.section())
                        .text("how", it.how()),
                Place.DISINFECTANT,
                Place.DUST,
                Place.CURRENT_AND_WATER);
    }

    private static EntryForm used() {
        return EntryForm.of(
                "machine-use-changed",
                Shelf.MACHINES,
                MachineUseChanged.class,
                asks -> List.of(
                        asks.known().anyMachine(Need.NEEDED),
                        asks.choice("use", MachineUse.class, MachineUse.OUT_OF_USE),
                        asks.text("why").optional()),
                r -> new MachineUseChanged(
                        r.name("machine", MachineName::new), r.choice("use", MachineUse.class), r.text("why")),
                it -> new Written()
                        .name("machine", it.machine())
                        .choice("use", it.use())
                        .text("why", it.why()));
    }

    private static EntryForm climate() {
        return EntryForm.of(
                "climate-noted",
                Shelf.MACHINES,
                ClimateNoted.class,
                asks -> {
                    var fields = new ArrayList<Field>();
                    fields.add(asks.known().anyMachine(Need.NEEDED));
                    fields.add(asks.text("section").optional());
                    fields.add(asks.measure("dry").optional());
                    fields.add(asks.measure("wet").optional());
                    fields.add(asks.measure("humidity_pct").withUnit("%").optional());
                    for (var check : RoundCheck.values()) {
                        fields.add(asks.seen("check_" + Asks.word(check)));
                    }
                    fields.add(asks.remark("note"));
                    return fields;
                },
                r -> {
                    var checks = new ArrayList<RoundCheck>();
                    for (var check : RoundCheck.values()) {
                        if (r.text("check_" + Asks.word(check)).equals(Asks.IN_ORDER)) {
                            checks.add(check);
                        }
                    }
                    var dry = Thermometers.read(r, "dry");
                    var wet = Thermometers.read(r, "wet");
                    Thermometers.wetBelowDry(r, dry, wet);
                    return new ClimateNoted(
                            r.name("machine", MachineName::new),
                            r.nameOrNone("section", SectionName::new),
                            dry,
                            wet,
                            r.measureOrNone("humidity_pct", Humidity::parse),
                            checks,
                            r.text("note"));
                },
                it -> {
                    var humidity = it.humidity();
                    var written = new Written()
                            .name("machine", it.machine())
                            .name("section", it.section())
                            .typed("dry", it.dry())
                            .typed("wet", it.wet())
                            .text("humidity_pct", humidity == null ? "" : Double.toString(humidity.pct()))
                            .text("note", it.note());
                    it.inOrder().forEach(c -> written.text("check_" + Asks.word(c), Asks.IN_ORDER));
                    return written;
                },
                Place.CURRENT_AND_WATER);
    }
}
