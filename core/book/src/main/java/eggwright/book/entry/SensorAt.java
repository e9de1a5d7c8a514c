package eggwright.book.entry;

import eggwright.book.name.MachineName;
import eggwright.book.name.Name;
import eggwright.units.OutOfRange;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * One quantity of one sensor in one place, as readings call it. In whatever unit it writes: a logger that was set from
 * Fahrenheit to Celsius is the same sensor.
 *
 * @param machine absent where it hangs in none
 * @param sensor what the farm, or its logger, calls it
 */
public record SensorAt(SensorPlace place, @Nullable MachineName machine, String sensor, SensorQuantity quantity)
        implements Comparable<SensorAt> {
    private static final Comparator<SensorAt> ORDER = Comparator.comparing(SensorAt::place)
            .thenComparing(SensorAt::machine, Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(SensorAt::sensor)
            .thenComparing(SensorAt::quantity);

    public SensorAt {
        sensor = Name.check("sensor", sensor);
        if (place == SensorPlace.IN_MACHINE && machine == null) {
            throw new OutOfRange(
                    EntryReason.SENSOR_WITHOUT_MACHINE, "Sensor " + sensor + " hangs in a machine that is not named.");
        }
        if (place != SensorPlace.IN_MACHINE && machine != null) {
            throw new OutOfRange(
                    EntryReason.MACHINE_OF_OTHER_PLACE,
                    "Sensor " + sensor + " hangs in no machine, but " + machine + " is named.",
                    machine.text());
        }
    }

    @Override
    public int compareTo(SensorAt other) {
        return ORDER.compare(this, other);
    }
}
