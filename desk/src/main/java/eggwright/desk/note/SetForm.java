package eggwright.desk.note;

import eggwright.book.entry.EggsSet;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Lot;
import eggwright.book.entry.MachineKind;
import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.name.SectionName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.book.picture.Stored;
import eggwright.desk.form.Field.Need;
import eggwright.trade.caution.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Trays into the heat: each row a lot, rows with the same tray one load. */
final class SetForm {
    private static final Pattern PLACES = Pattern.compile("[,\\s]+");

    private SetForm() {}

    static EntryForm of() {
        return EntryForm.of(
                "eggs-set",
                Shelf.SETTING,
                EggsSet.class,
                asks -> List.of(
                        asks.known().nextSet(),
                        asks.known().species(),
                        asks.known().machines("machine", MachineKind.SETTER, Need.OPTIONAL),
                        asks.rows(
                                "lot",
                                6,
                                List.of(
                                        asks.plain("tray"),
                                        asks.plain("section").optional(),
                                        asks.bare(asks.known().pens(Need.OPTIONAL)),
                                        asks.plainEggs("eggs"),
                                        asks.known().layDate("laid_from", Stored::laidFrom),
                                        asks.known().layDate("laid_to", Stored::laidTo),
                                        asks.fold(
                                                "lot",
                                                asks.plain("mark").optional(),
                                                asks.plain("places").optional(),
                                                asks.plain("position").optional(),
                                                asks.known().otherSpecies(),
                                                asks.plain("other_machine").optional())))),
                SetForm::readSet,
                SetForm::writeSet,
                Place.CURRENT_AND_WATER);
    }

    /** Each row is a lot; rows with the same tray make one load. */
    private static EggsSet readSet(FormReader r) {
        var set = r.name("set", SetName::new);
        var species = r.species("species");
        var machine = r.nameOrNone("machine", MachineName::new);
        var lots = new LinkedHashMap<TrayName, List<Lot>>();
        var stands = new LinkedHashMap<TrayName, Stand>();
        var rows = r.rows("lot");
        if (rows.isEmpty()) {
            r.mend("lot", "set.noTrays");
        }
        for (var row : rows) {
            var tray = row.name("tray", TrayName::new);
            var section = row.nameOrNone("section", SectionName::new);
            int eggs = row.whole("eggs");
            if (eggs == 0 && !row.isEmpty("eggs")) {
                row.mend("eggs", "set.noEggs");
            }
            var places = places(row);
            var pen = row.nameOrNone("pen", PenName::new);
            var from = row.dayOrNone("laid_from");
            var to = row.dayOrNone("laid_to");
            var mark = row.isEmpty("mark") ? null : row.text("mark");
            var other = row.nameOrNone("other_machine", MachineName::new);
            var position = row.isEmpty("position") ? null : row.text("position");
            var kind = row.isEmpty("other_species") ? species : row.species("other_species");
            stands.putIfAbsent(tray, new Stand(other == null ? machine : other, section, position));
            lots.computeIfAbsent(tray, t -> new ArrayList<>())
                    .add(new Lot(pen, kind, from, to, Math.max(1, eggs), mark, places));
        }
        var loads = new ArrayList<LoadSet>();
        lots.forEach((tray, mine) -> {
            var stand = stands.getOrDefault(tray, Stand.NOWHERE);
            loads.add(new LoadSet(tray, stand.machine(), stand.section(), stand.position(), mine));
        });
        return new EggsSet(set, loads);
    }

    /** Where a load stands; the first row of a tray says it. */
    private record Stand(
            @Nullable MachineName machine,
            @Nullable SectionName section,
            @Nullable String position) {
        static final Stand NOWHERE = new Stand(null, null, null);
    }

    private static List<Integer> places(FormReader row) {
        var places = new ArrayList<Integer>();
        for (var part : PLACES.split(row.text("places"), -1)) {
            if (!part.isEmpty()) {
                if (part.matches("\\d{1,4}")) {
                    places.add(Integer.valueOf(part));
                } else {
                    row.mend("places", "set.places", part);
                }
            }
        }
        return places;
    }

    private static Written writeSet(EggsSet it) {
        var first = it.loads().getFirst();
        var usual = first.lots().getFirst().species();
        var written = new Written()
                .name("set", it.set())
                .name("machine", first.machine())
                .species(usual);
        int row = 0;
        for (var load : it.loads()) {
            for (var lot : load.lots()) {
                var at = "lot." + row + ".";
                row++;
                written.name(at + "tray", load.tray())
                        .name(at + "section", load.section())
                        .text(at + "position", load.position())
                        .name(
                                at + "other_machine",
                                java.util.Objects.equals(load.machine(), first.machine()) ? null : load.machine())
                        .text(
                                at + "other_species",
                                lot.species() == usual ? "" : lot.species().word())
                        .name(at + "pen", lot.pen())
                        .whole(at + "eggs", lot.eggs())
                        .day(at + "laid_from", lot.laidFrom())
                        .day(at + "laid_to", lot.laidTo())
                        .text(at + "mark", lot.mark())
                        .text(
                                at + "places",
                                String.join(
                                        " ",
                                        lot.places().stream()
                                                .map(String::valueOf)
                                                .toList()));
            }
        }
        return written;
    }
}
