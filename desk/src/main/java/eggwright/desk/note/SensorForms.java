package eggwright.desk.note;

import eggwright.book.entry.EntryReason;
import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorPlace;
import eggwright.book.entry.SensorQuantity;
import eggwright.book.entry.SensorTrust;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.name.MachineName;
import eggwright.book.name.Name;
import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Need;
import eggwright.units.Amount;
import eggwright.units.OutOfRange;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a person says of a sensor. */
final class SensorForms {
    static final List<EntryForm> ALL = List.of(compared(), trust(), released());

    private SensorForms() {}

    private static EntryForm compared() {
        return EntryForm.of(
                "sensor-compared",
                Shelf.MACHINES,
                SensorCompared.class,
                asks -> with(
                        sensor(asks),
                        asks.measure("showed"),
                        asks.measure("reference"),
                        asks.text("compared_by").optional(),
                        asks.fold(
                                "compared",
                                asks.measure("add").optional(),
                                asks.moment("counts_from").optional())),
                r -> {
                    var sensor = sensor(r);
                    var showed = amount(r, "showed", sensor.quantity());
                    var reference = amount(r, "reference", sensor.quantity());
                    var add = amount(r, "add", sensor.quantity());
                    both(r, showed, reference, add);
                    if (!r.toMend().isEmpty()) {
                        return standIn(sensor);
                    }
                    return new SensorCompared(
                            sensor, showed, reference, add, r.momentOrNone("counts_from"), r.text("compared_by"));
                },
                it -> written(it.sensor())
                        .typed("showed", it.showed())
                        .typed("reference", it.reference())
                        .typed("add", it.add())
                        .moment("counts_from", it.from())
                        .text("compared_by", it.by()));
    }

    /** What is missing, beside the field in which it is. */
    private static void both(FormReader r, @Nullable Amount showed, @Nullable Amount reference, @Nullable Amount add) {
        boolean saysOne = !r.isEmpty("showed") || !r.isEmpty("reference");
        if (add != null && saysOne) {
            r.mend("add", "sensor.eitherOr");
        } else if (add == null && r.isEmpty("add")) {
            if (showed == null && r.isEmpty("showed")) {
                r.mend("showed", "sensor.showedNeeded");
            }
            if (reference == null && r.isEmpty("reference")) {
                r.mend("reference", "sensor.referenceNeeded");
            }
        }
    }

    /** Never kept: something beside it is to be mended. */
    private static SensorCompared standIn(SensorAt sensor) {
        var unit = Arrays.stream(Amount.Unit.values())
                .filter(sensor.quantity()::isMeasuredIn)
                .findFirst()
                .orElseThrow();
        return new SensorCompared(sensor, null, null, new Amount(0, unit), null, "");
    }

    private static EntryForm trust() {
        return EntryForm.of(
                "sensor-trust-changed",
                Shelf.MACHINES,
                SensorTrustChanged.class,
                asks -> with(
                        sensor(asks),
                        asks.choice("trust", SensorTrust.class, SensorTrust.SET_ASIDE),
                        asks.moment("counts_from").optional(),
                        asks.text("why").optional()),
                r -> new SensorTrustChanged(
                        sensor(r), r.choice("trust", SensorTrust.class), r.momentOrNone("counts_from"), r.text("why")),
                it -> written(it.sensor())
                        .choice("trust", it.trust())
                        .moment("counts_from", it.from())
                        .text("why", it.why()));
    }

    private static EntryForm released() {
        return EntryForm.of(
                "readings-released",
                Shelf.MACHINES,
                ReadingsReleased.class,
                asks -> with(
                        sensor(asks),
                        asks.moment("held_from"),
                        asks.moment("held_to"),
                        asks.text("why").optional()),
                r -> {
                    var sensor = sensor(r);
                    var from = moment(r, "held_from");
                    var to = moment(r, "held_to");
                    if (r.toMend().isEmpty() && to.isBefore(from)) {
                        r.mend("held_to", "sensor.backwards");
                    }
                    return new ReadingsReleased(sensor, from, r.toMend().isEmpty() ? to : from, r.text("why"));
                },
                it -> written(it.sensor())
                        .moment("held_from", it.from())
                        .moment("held_to", it.to())
                        .text("why", it.why()));
    }

    private static OffsetDateTime moment(FormReader r, String name) {
        var read = r.momentOrNone(name);
        if (r.isEmpty(name)) {
            r.mend(name, "reader.momentNeeded");
        }
        // Stands in for what cannot be read; never kept.
        return Objects.requireNonNullElseGet(
                read, () -> LocalDateTime.of(2000, 1, 1, 0, 0).atOffset(ZoneOffset.UTC));
    }

    private static List<Field> with(List<Field> sensor, Field... more) {
        return Stream.concat(sensor.stream(), Stream.of(more)).toList();
    }

    /** Which sensor; a link from its page has it filled in. */
    private static List<Field> sensor(Asks asks) {
        return List.of(
                asks.choice("sensor_place", SensorPlace.class, SensorPlace.IN_MACHINE),
                asks.known().anyMachine(Need.OPTIONAL),
                asks.text("sensor"),
                asks.choice("quantity", SensorQuantity.class, SensorQuantity.AIR_TEMPERATURE));
    }

    private static SensorAt sensor(FormReader r) {
        var place = r.choice("sensor_place", SensorPlace.class);
        var machine = r.nameOrNone("machine", MachineName::new);
        if (place == SensorPlace.IN_MACHINE && machine == null) {
            if (r.isEmpty("machine")) {
                r.mend("machine", "sensor.machineNeeded");
            }
            machine = new MachineName("?");
        } else if (place != SensorPlace.IN_MACHINE && machine != null) {
            r.mend("machine", "sensor.noMachine");
            machine = null;
        }
        return new SensorAt(
                place,
                machine,
                r.name("sensor", text -> Name.check("sensor", text)),
                r.choice("quantity", SensorQuantity.class));
    }

    /** Humidity has one unit only, so it may be left out. */
    private static @Nullable Amount amount(FormReader r, String name, SensorQuantity quantity) {
        return r.measureOrNone(name, text -> {
            boolean isBarePercent = quantity == SensorQuantity.HUMIDITY && text.matches("[-+]?[\\d.]+");
            var amount = Amount.parse(isBarePercent ? text + "%" : text);
            if (!quantity.isMeasuredIn(amount.unit())) {
                throw new OutOfRange(
                        EntryReason.AMOUNT_OF_OTHER_QUANTITY, text + " is in a unit of another quantity.", text);
            }
            return amount;
        });
    }

    private static Written written(SensorAt sensor) {
        return new Written()
                .text("sensor_place", sensor.place().name().toLowerCase(Locale.ROOT))
                .name("machine", sensor.machine())
                .text("sensor", sensor.sensor())
                .text("quantity", sensor.quantity().word());
    }
}
