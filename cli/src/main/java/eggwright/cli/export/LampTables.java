package eggwright.cli.export;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Weighed;
import eggwright.trade.BreakOutClass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What was seen at the lamp, at the bench and on the scale. */
final class LampTables {
    static final List<ExportTable> ALL = List.of(looks(), breakOuts(), weighings());

    private LampTables() {}

    private static ExportTable looks() {
        var columns = new ArrayList<>(List.of("set", "tray", "pen", "basket", "counted_before", "looked_at"));
        for (var finding : Finding.values()) {
            columns.addAll(
                    List.of("seen_" + finding.word(), "removed_" + finding.word(), "kept_to_open_" + finding.word()));
        }
        columns.addAll(List.of("removed_unsorted", "minutes_out"));
        return Row.entries("looks", columns, Looked.class, (row, it) -> {
            row.scope(it.scope()).whole("counted_before", it.countedBefore()).whole("looked_at", it.lookedAt());
            for (var finding : Finding.values()) {
                it.findings().stream().filter(f -> f.finding() == finding).forEach(f -> counts(row, f));
            }
            return row.whole("removed_unsorted", it.removedUnsorted()).whole("minutes_out", it.minutesOut());
        });
    }

    private static void counts(Row row, FindingCount count) {
        var word = count.finding().word();
        row.whole("seen_" + word, count.seen())
                .whole("removed_" + word, count.removed())
                .whole("kept_to_open_" + word, count.keptToOpen());
    }

    private static ExportTable breakOuts() {
        var columns = new ArrayList<>(List.of("set", "tray", "pen", "basket", "look", "opened", "clears_opened"));
        Arrays.stream(BreakOutClass.values()).forEach(c -> columns.add(c.word()));
        return Row.entries("break-outs", columns, BrokenOut.class, (row, it) -> {
            row.scope(it.scope())
                    .text("look", it.scope().look())
                    .whole("opened", it.opened())
                    .whole("clears_opened", it.clearsOpened());
            for (var what : BreakOutClass.values()) {
                row.whole(what.word(), it.named(what));
            }
            return row;
        });
    }

    private static ExportTable weighings() {
        return Row.entries(
                "weighings", List.of("set", "tray", "what", "gross_g", "tare_g", "eggs"), Weighed.class, (row, it) -> {
                    var tare = it.tare();
                    return row.text("set", it.set())
                            .text("tray", it.tray())
                            .text("what", it.what())
                            .real("gross_g", it.gross().grams())
                            .real("tare_g", tare == null ? null : tare.grams())
                            .whole("eggs", it.eggs());
                });
    }
}
