package eggwright.cli.export;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.IncidentNoted;
import eggwright.book.entry.Remarked;
import java.util.List;
import java.util.stream.Stream;

/** Deliveries, what people wrote in their own words, and the list of all notes. */
final class TrailTables {
    static final List<ExportTable> ALL = List.of(deliveries(), incidents(), remarks(), entries());

    private TrailTables() {}

    private static ExportTable deliveries() {
        return Row.entries(
                "deliveries",
                List.of("order", "buyer", "species", "chicks", "dead_on_arrival"),
                ChicksDelivered.class,
                (row, it) -> row.text("order", it.order())
                        .text("buyer", it.buyer())
                        .text("species", it.species())
                        .whole("chicks", it.chicks())
                        .whole("dead_on_arrival", it.deadOnArrival()));
    }

    private static ExportTable incidents() {
        return Row.entries(
                "incidents",
                List.of("what", "machine", "until", "reached", "text"),
                IncidentNoted.class,
                (row, it) -> row.text("what", it.what())
                        .text("machine", it.machine())
                        .text("until", it.until())
                        .text("reached", it.reached())
                        .text("text", it.text()));
    }

    private static ExportTable remarks() {
        return Row.entries("remarks", List.of("set", "tray", "text"), Remarked.class, (row, it) -> {
            var about = it.about();
            return row.text("set", about == null ? null : about.set())
                    .text("tray", about == null ? null : about.tray())
                    .text("text", it.text());
        });
    }

    /** Every note that counts, whatever its kind; the book as JSON Lines holds the mended and withdrawn ones too. */
    private static ExportTable entries() {
        return new ExportTable(
                "entries",
                Row.columns(Stream.of("noted", "device", "origin", "kind")),
                ledger -> Row.each(
                        ledger,
                        entry -> List.of(Row.of(entry)
                                .text("noted", entry.entry().noted())
                                .text("device", entry.entry().device())
                                .text("origin", entry.entry().origin())
                                .text("kind", entry.payload().kindWord())
                                .done(entry))));
    }
}
