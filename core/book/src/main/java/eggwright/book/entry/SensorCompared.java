package eggwright.book.entry;

import eggwright.units.Amount;
import eggwright.units.OutOfRange;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A sensor was held against a reference, or is known to be off. Either both showed something, or only the difference is
 * known. From its moment on, until the next, the difference is added to what the sensor reads; nothing that it read is
 * changed.
 *
 * @param showed what the sensor itself read, before any correction; absent where only the difference is known
 * @param reference what the reference read; absent likewise
 * @param add what is to be added to the sensor's readings; absent where both readings are given
 * @param from since when it has been so; absent: since it was compared
 * @param by what it was held against, in the farm's own words
 */
public record SensorCompared(
        SensorAt sensor,
        @Nullable Amount showed,
        @Nullable Amount reference,
        @Nullable Amount add,
        @Nullable OffsetDateTime from,
        String by)
        implements Payload {
    public SensorCompared {
        by = Checks.text("Compared with", by);
        Checks.year("Since when it has been so", from);
        Checks.unit(sensor, showed);
        Checks.unit(sensor, reference);
        Checks.unit(sensor, add);
        boolean hasBoth = showed != null && reference != null && add == null;
        boolean hasDifference = showed == null && reference == null && add != null;
        if (!hasBoth && !hasDifference) {
            throw new OutOfRange(
                    EntryReason.COMPARED_WITH_NOTHING,
                    "A comparison holds what sensor and reference showed, or only the difference.");
        }
        double most = sensor.quantity().mostCorrection().standardDifference();
        double correction = correction(showed, reference, add);
        if (!(correction >= -most && correction <= most)) {
            var unit = sensor.quantity().mostCorrection().unit();
            throw new OutOfRange(
                    EntryReason.CORRECTION_TOO_LARGE,
                    "A correction of " + correction + unit.symbol() + " is more than " + most + unit.symbol() + ".",
                    new Amount(Math.round(correction * 10) / 10.0, unit).toString(),
                    sensor.quantity().mostCorrection().toString());
        }
    }

    /** What is added to the sensor's readings, in degrees Celsius, percent or hectopascal. */
    public double correction() {
        return correction(showed, reference, add);
    }

    private static double correction(@Nullable Amount showed, @Nullable Amount reference, @Nullable Amount add) {
        return add != null
                ? add.standardDifference()
                : showed == null || reference == null ? 0 : reference.standard() - showed.standard();
    }
}
