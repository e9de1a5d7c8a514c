package eggwright.cli.export;

import eggwright.book.entry.ChicksDied;
import eggwright.book.entry.ChicksPlaced;
import eggwright.book.entry.ChicksSold;
import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import java.util.List;
import java.util.stream.Stream;

/** Eggs into the heat, from tray to tray, to the hatcher, and chicks off. */
final class HatchTables {
    static final List<ExportTable> ALL = List.of(lots(), moves(), transfers(), takeOffs(), chicks());

    private HatchTables() {}

    private static ExportTable lots() {
        return new ExportTable(
                "lots",
                Row.columns(Stream.of(
                        "set",
                        "tray",
                        "machine",
                        "section",
                        "position",
                        "pen",
                        "species",
                        "laid_from",
                        "laid_to",
                        "eggs",
                        "mark")),
                ledger -> Row.each(
                        ledger,
                        entry -> entry.payload() instanceof EggsSet it
                                ? it.loads().stream()
                                        .flatMap(load -> load.lots().stream()
                                                .map(lot -> Row.of(entry)
                                                        .text("set", it.set())
                                                        .text("tray", load.tray())
                                                        .text("machine", load.machine())
                                                        .text("section", load.section())
                                                        .text("position", load.position())
                                                        .text("pen", lot.pen())
                                                        .text("species", lot.species())
                                                        .text("laid_from", lot.laidFrom())
                                                        .text("laid_to", lot.laidTo())
                                                        .whole("eggs", lot.eggs())
                                                        .text("mark", lot.mark())
                                                        .done(entry)))
                                        .toList()
                                : List.of()));
    }

    private static ExportTable moves() {
        return Row.entries(
                "moves",
                List.of("from_set", "from_tray", "pen", "eggs", "to_set", "to_tray", "machine", "section"),
                EggsMoved.class,
                (row, it) -> row.text("from_set", it.fromSet())
                        .text("from_tray", it.fromTray())
                        .text("pen", it.pen())
                        .whole("eggs", it.eggs())
                        .text("to_set", it.toSet())
                        .text("to_tray", it.toTray())
                        .text("machine", it.machine())
                        .text("section", it.section()));
    }

    private static ExportTable transfers() {
        return new ExportTable(
                "transfers",
                Row.columns(Stream.of("set", "tray", "eggs", "basket", "hatcher")),
                ledger -> Row.each(
                        ledger,
                        entry -> entry.payload() instanceof Transferred it
                                ? it.eggs().stream()
                                        .map(part -> Row.of(entry)
                                                .text("set", part.set())
                                                .text("tray", part.tray())
                                                .whole("eggs", part.eggs())
                                                .text("basket", part.basket())
                                                .text("hatcher", it.hatcher())
                                                .done(entry))
                                        .toList()
                                : List.of()));
    }

    private static ExportTable takeOffs() {
        return Row.entries(
                "take-offs",
                List.of(
                        "set",
                        "tray",
                        "pen",
                        "basket",
                        "pull",
                        "saleable",
                        "culled",
                        "dead_in_basket",
                        "pipped_alive_left"),
                TakenOff.class,
                (row, it) -> row.scope(it.counted())
                        .text("pull", it.pull())
                        .whole("saleable", it.saleable())
                        .whole("culled", it.culled())
                        .whole("dead_in_basket", it.deadInBasket())
                        .whole("pipped_alive_left", it.pippedAliveLeft()));
    }

    private static ExportTable chicks() {
        return new ExportTable(
                "chicks",
                Row.columns(Stream.of("what", "set", "species", "chicks", "brooder", "buyer", "why")),
                ledger -> Row.each(ledger, entry -> {
                    var row = Row.of(entry).text("what", entry.payload().kindWord());
                    if (entry.payload() instanceof ChicksPlaced it) {
                        return List.of(row.text("set", it.set())
                                .text("species", it.species())
                                .whole("chicks", it.chicks())
                                .text("brooder", it.brooder())
                                .done(entry));
                    }
                    if (entry.payload() instanceof ChicksDied it) {
                        return List.of(row.text("set", it.set())
                                .text("species", it.species())
                                .whole("chicks", it.chicks())
                                .text("brooder", it.brooder())
                                .text("why", it.why())
                                .done(entry));
                    }
                    return entry.payload() instanceof ChicksSold it
                            ? List.of(row.text("set", it.set())
                                    .text("species", it.species())
                                    .whole("chicks", it.chicks())
                                    .text("buyer", it.buyer())
                                    .done(entry))
                            : List.of();
                }));
    }
}
