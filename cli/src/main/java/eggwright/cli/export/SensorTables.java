package eggwright.cli.export;

import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorQuantity;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.fold.Effective;
import eggwright.cli.answer.Answer;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What was said of the sensors. */
final class SensorTables {
    static final List<ExportTable> ALL = List.of(notes());

    private SensorTables() {}

    private static ExportTable notes() {
        return new ExportTable(
                "sensor-notes",
                Row.columns(Stream.of(
                        "what",
                        "place",
                        "machine",
                        "sensor",
                        "quantity",
                        "showed",
                        "reference",
                        "add",
                        "correction_c",
                        "correction_pct",
                        "correction_hpa",
                        "from",
                        "to",
                        "by",
                        "why")),
                ledger -> Row.each(ledger, SensorTables::note));
    }

    private static List<Answer> note(Effective entry) {
        if (entry.payload() instanceof SensorCompared it) {
            return List.of(of(entry, "compared", it.sensor())
                    .text("showed", it.showed())
                    .text("reference", it.reference())
                    .text("add", it.add())
                    .real("correction_" + suffix(it.sensor().quantity()), it.correction())
                    .text("from", it.from())
                    .text("by", it.by())
                    .done(entry));
        }
        if (entry.payload() instanceof SensorTrustChanged it) {
            return List.of(of(entry, it.trust().name().toLowerCase(Locale.ROOT), it.sensor())
                    .text("from", it.from())
                    .text("why", it.why())
                    .done(entry));
        }
        return entry.payload() instanceof ReadingsReleased it
                ? List.of(of(entry, "released", it.sensor())
                        .text("from", it.from())
                        .text("to", it.to())
                        .text("why", it.why())
                        .done(entry))
                : List.of();
    }

    private static String suffix(SensorQuantity quantity) {
        return switch (quantity) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> "c";
            case HUMIDITY -> "pct";
            case PRESSURE -> "hpa";
        };
    }

    private static Row of(Effective entry, String what, SensorAt sensor) {
        return Row.of(entry)
                .text("what", what)
                .text("place", sensor.place())
                .text("machine", sensor.machine())
                .text("sensor", sensor.sensor())
                .text("quantity", sensor.quantity());
    }
}
