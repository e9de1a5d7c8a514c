package eggwright.climate.sensor;

import eggwright.units.OutOfRange;
import java.time.Instant;

/**
 * What is added to a sensor's readings from a day on, until the next calibration.
 *
 * @param offset in standard units: degrees Celsius, percent or hectopascal
 */
public record Calibration(Instant from, double offset) {
    public Calibration {
        OutOfRange.check("Calibration offset", offset, -100, 100, "degrees, percent or hectopascal");
    }
}
