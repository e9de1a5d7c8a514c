package eggwright.cli.export;

import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.SetPicture;
import eggwright.cli.answer.Answer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What the entries add up to: sets with their egg account, loads, pens, machines, orders. */
final class PictureTables {
    static final List<ExportTable> ALL = List.of(sets(), loads(), eggRoom(), pens(), machines(), orders());

    private PictureTables() {}

    private static <T> List<Answer> rows(Iterable<T> each, Function<T, Row> row) {
        var rows = new ArrayList<Answer>();
        each.forEach(one -> rows.add(row.apply(one).done()));
        return rows;
    }

    /** The fates sum to the eggs set. */
    private static ExportTable sets() {
        var columns = new ArrayList<>(List.of("set", "set_on", "species", "trays", "eggs", "taken_off_at"));
        Arrays.stream(Fate.values()).forEach(f -> columns.add(f.word()));
        return new ExportTable(
                "sets", columns, ledger -> rows(ledger.picture().sets().values(), PictureTables::set));
    }

    private static Row set(SetPicture set) {
        var row = Row.empty()
                .text("set", set.name())
                .text("set_on", set.setOn())
                .text("species", set.species().stream().map(s -> s.word()).collect(Collectors.joining(" and ")))
                .whole("trays", set.loads().size())
                .whole("eggs", set.eggsSet())
                .text("taken_off_at", set.takenOffAt());
        for (var fate : Fate.values()) {
            row.whole(
                    fate.word(),
                    set.account().fates().stream()
                            .filter(f -> f.fate() == fate)
                            .filter(f -> f.of().ids().getFirst().load().set().equals(set.name()))
                            .mapToInt(FateCount::eggs)
                            .sum());
        }
        return row;
    }

    private static ExportTable loads() {
        return new ExportTable(
                "loads",
                List.of(
                        "set",
                        "tray",
                        "set_on",
                        "pens",
                        "species",
                        "eggs",
                        "phase",
                        "eggs_now",
                        "machine",
                        "section",
                        "position",
                        "baskets",
                        "looks"),
                ledger -> rows(
                        ledger.picture().sets().values().stream()
                                .flatMap(s -> s.loads().values().stream())
                                .toList(),
                        PictureTables::load));
    }

    private static Row load(LoadPicture load) {
        var lots = load.parcels().stream().map(p -> p.lot()).toList();
        var row = Row.empty()
                .text("set", load.ref().set())
                .text("tray", load.ref().tray())
                .text("set_on", load.setOn())
                .text(
                        "pens",
                        lots.stream()
                                .map(l -> l.pen())
                                .filter(p -> p != null)
                                .map(p -> p.text())
                                .distinct()
                                .collect(Collectors.joining(" and ")))
                .text(
                        "species",
                        lots.stream().map(l -> l.species().word()).distinct().collect(Collectors.joining(" and ")))
                .whole("eggs", lots.stream().mapToInt(l -> l.eggs()).sum())
                .text("phase", load.phase())
                .whole("eggs_now", load.eggsNow());
        load.place()
                .ifPresent(place -> row.text("machine", place.machine())
                        .text("section", place.section())
                        .text("position", place.position()));
        return row.text("baskets", load.baskets().stream().map(b -> b.text()).collect(Collectors.joining(" and ")))
                .whole("looks", load.looks().size());
    }

    private static ExportTable eggRoom() {
        return new ExportTable(
                "egg-room",
                List.of("pen", "species", "laid_from", "laid_to", "eggs"),
                ledger -> ledger.picture().eggRoom().values().stream()
                        .flatMap(shelf -> shelf.stored().stream()
                                .map(stored -> Row.empty()
                                        .text("pen", shelf.key().pen())
                                        .text("species", shelf.key().species())
                                        .text("laid_from", stored.laidFrom())
                                        .text("laid_to", stored.laidTo())
                                        .whole("eggs", stored.eggs())
                                        .done()))
                        .toList());
    }

    /** A row for each change of the birds of a pen; one without a change where it has none. */
    private static ExportTable pens() {
        return new ExportTable(
                "pens",
                List.of("pen", "species", "opened_on", "closed_on", "on", "change", "cocks", "hens", "why"),
                ledger -> {
                    var rows = new ArrayList<Answer>();
                    for (var pen : ledger.picture().pens().values()) {
                        var changes = pen.changes();
                        if (changes.isEmpty()) {
                            rows.add(pen(pen).done());
                        }
                        changes.forEach(c -> rows.add(pen(pen).text("on", c.on())
                                .text("change", c.change())
                                .whole("cocks", c.cocks())
                                .whole("hens", c.hens())
                                .text("why", c.why())
                                .done()));
                    }
                    return rows;
                });
    }

    private static Row pen(eggwright.book.picture.PenPicture pen) {
        return Row.empty()
                .text("pen", pen.pen())
                .text("species", pen.species())
                .text("opened_on", pen.openedOn())
                .text("closed_on", pen.closedOn());
    }

    private static ExportTable machines() {
        return new ExportTable(
                "machines",
                List.of("machine", "does", "use", "sections", "tray_places", "cleaned_at"),
                ledger -> rows(
                        ledger.picture().machines().values(),
                        m -> Row.empty()
                                .text("machine", m.machine())
                                .text("does", m.does())
                                .text("use", m.use())
                                .text(
                                        "sections",
                                        m.sections().stream().map(s -> s.text()).collect(Collectors.joining(", ")))
                                .whole("tray_places", m.trayPlaces())
                                .text("cleaned_at", m.cleanedAt())));
    }

    private static ExportTable orders() {
        return new ExportTable(
                "orders",
                List.of("order", "buyer", "species", "day", "chicks", "owed", "cancelled", "note"),
                ledger -> rows(ledger.picture().orders().values(), o -> {
                    var row = Row.empty().text("order", o.order());
                    var ordered = o.ordered();
                    if (ordered != null) {
                        row.text("buyer", ordered.buyer())
                                .text("species", ordered.species())
                                .text("day", ordered.day())
                                .whole("chicks", ordered.chicks());
                    }
                    row.whole("owed", o.owed()).text("cancelled", o.cancelled());
                    return ordered == null ? row : row.text("note", ordered.note());
                }));
    }
}
