package eggwright.climate.care;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.ReadingStore.Extent;
import eggwright.climate.sensor.Aside;
import eggwright.climate.sensor.Calibration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One channel of a sensor, as it stands.
 *
 * @param lastRead in its own unit, as it came; empty where it read nothing before now
 * @param correction what is added to it now
 * @param aside since when it is set aside; empty where it counts
 * @param held what is held back, in time order
 * @param byHand the last time that a keeper read the same air
 * @param findings why to look at it
 */
public record SensorNow(
        Channel channel,
        Extent extent,
        OptionalDouble lastRead,
        Optional<Calibration> correction,
        Optional<Aside> aside,
        List<HeldStretch> held,
        Optional<ByHand> byHand,
        List<Finding> findings) {
    public SensorNow {
        held = List.copyOf(held);
        findings = List.copyOf(findings);
    }

    /** The last reading, corrected, in degrees Celsius, percent or hectopascal. */
    public OptionalDouble lastCorrected() {
        return lastRead.isEmpty()
                ? lastRead
                : OptionalDouble.of(channel.unit().standard(lastRead.getAsDouble())
                        + correction.map(Calibration::offset).orElse(0.0));
    }

    public int heldCount() {
        return held.stream().mapToInt(HeldStretch::count).sum();
    }
}
