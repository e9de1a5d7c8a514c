package eggwright.cli.export;

import eggwright.book.entry.ClimateNoted;
import eggwright.book.entry.EggsCounted;
import eggwright.book.entry.EggsDiscarded;
import eggwright.book.entry.EggsEaten;
import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.EggsReceived;
import eggwright.book.entry.EggsSold;
import eggwright.book.entry.RejectReason;
import eggwright.book.entry.Rejected;
import eggwright.book.fold.Effective;
import eggwright.cli.answer.Answer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The egg room and the machines, as they were noted. */
final class RoomTables {
    static final List<ExportTable> ALL = List.of(gatherings(), eggRoomNotes(), climate());

    private RoomTables() {}

    private static ExportTable gatherings() {
        var columns = new ArrayList<>(List.of("pen", "species", "laid_from", "laid_to", "kept"));
        Arrays.stream(RejectReason.values()).forEach(r -> columns.add("rejected_" + r.word()));
        return Row.entries("gatherings", columns, EggsGathered.class, (row, it) -> {
            row.text("pen", it.pen())
                    .text("species", it.species())
                    .text("laid_from", it.laidFrom())
                    .text("laid_to", it.laidTo())
                    .whole("kept", it.kept());
            for (var reason : RejectReason.values()) {
                row.whole(
                        "rejected_" + reason.word(),
                        it.rejected().stream()
                                .filter(r -> r.why() == reason)
                                .mapToInt(Rejected::eggs)
                                .sum());
            }
            return row;
        });
    }

    private static ExportTable eggRoomNotes() {
        return new ExportTable(
                "egg-room-notes",
                Row.columns(Stream.of(
                        "what", "pen", "species", "laid_from", "laid_to", "eggs", "purpose", "from", "buyer", "why")),
                ledger -> Row.each(ledger, RoomTables::eggRoomNote));
    }

    private static List<Answer> eggRoomNote(Effective entry) {
        var row = Row.of(entry).text("what", entry.payload().kindWord());
        if (entry.payload() instanceof EggsReceived it) {
            return List.of(row.text("pen", it.keptAs())
                    .text("species", it.species())
                    .text("laid_from", it.laidFrom())
                    .text("laid_to", it.laidTo())
                    .whole("eggs", it.eggs())
                    .text("purpose", it.purpose())
                    .text("from", it.from())
                    .done(entry));
        }
        if (entry.payload() instanceof EggsSold it) {
            return List.of(row.text("pen", it.pen())
                    .text("species", it.species())
                    .text("laid_from", it.laidFrom())
                    .text("laid_to", it.laidTo())
                    .whole("eggs", it.eggs())
                    .text("buyer", it.buyer())
                    .done(entry));
        }
        if (entry.payload() instanceof EggsEaten it) {
            return List.of(row.text("pen", it.pen())
                    .text("species", it.species())
                    .text("laid_from", it.laidFrom())
                    .text("laid_to", it.laidTo())
                    .whole("eggs", it.eggs())
                    .done(entry));
        }
        if (entry.payload() instanceof EggsDiscarded it) {
            return List.of(row.text("pen", it.pen())
                    .text("species", it.species())
                    .text("laid_from", it.laidFrom())
                    .text("laid_to", it.laidTo())
                    .whole("eggs", it.eggs())
                    .text("why", it.why())
                    .done(entry));
        }
        return entry.payload() instanceof EggsCounted it
                ? List.of(row.text("pen", it.pen())
                        .text("species", it.species())
                        .whole("eggs", it.eggs())
                        .done(entry))
                : List.of();
    }

    private static ExportTable climate() {
        return Row.entries(
                "climate",
                List.of("machine", "section", "dry_c", "wet_c", "humidity_pct", "in_order", "note"),
                ClimateNoted.class,
                (row, it) -> {
                    var dry = it.dry();
                    var wet = it.wet();
                    var humidity = it.humidity();
                    return row.text("machine", it.machine())
                            .text("section", it.section())
                            .real("dry_c", dry == null ? null : dry.celsius())
                            .real("wet_c", wet == null ? null : wet.celsius())
                            .real("humidity_pct", humidity == null ? null : humidity.pct())
                            .text(
                                    "in_order",
                                    it.inOrder().stream()
                                            .map(c -> c.name().toLowerCase(Locale.ROOT))
                                            .collect(Collectors.joining(" ")))
                            .text("note", it.note());
                });
    }
}
