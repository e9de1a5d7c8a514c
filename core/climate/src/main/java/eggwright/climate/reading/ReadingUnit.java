package eggwright.climate.reading;

import eggwright.units.Temperature;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The unit in which a sensor writes. Readings are kept in it, digit for digit; they are compared and drawn in the
 * {@linkplain #standard standard} one: degrees Celsius, percent, hectopascal.
 */
public enum ReadingUnit {
    CELSIUS("c", "°C"),
    FAHRENHEIT("f", "°F"),
    PERCENT("pct", "%"),
    HECTOPASCAL("hpa", "hPa");

    private final String suffix;
    private final String sign;

    ReadingUnit(String suffix, String sign) {
        this.suffix = suffix;
        this.sign = sign;
    }

    /** As at the end of a column's name: {@code air_temperature_f}. */
    public String suffix() {
        return suffix;
    }

    public String sign() {
        return sign;
    }

    public static Optional<ReadingUnit> ofSuffix(String suffix) {
        return Arrays.stream(values()).filter(u -> u.suffix.equals(suffix)).findFirst();
    }

    /** Those that a quantity is measured in. */
    public static List<ReadingUnit> of(Quantity quantity) {
        return switch (quantity) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> List.of(CELSIUS, FAHRENHEIT);
            case HUMIDITY -> List.of(PERCENT);
            case PRESSURE -> List.of(HECTOPASCAL);
        };
    }

    /** The same in degrees Celsius, percent or hectopascal. */
    public double standard(double value) {
        return switch (this) {
            case CELSIUS, PERCENT, HECTOPASCAL -> value;
            case FAHRENHEIT -> (value - Temperature.FAHRENHEIT_AT_ICE) / Temperature.FAHRENHEIT_PER_CELSIUS;
        };
    }

    /** A difference in degrees Celsius, percent or hectopascal. */
    public double standardDifference(double difference) {
        return switch (this) {
            case CELSIUS, PERCENT, HECTOPASCAL -> difference;
            case FAHRENHEIT -> difference / Temperature.FAHRENHEIT_PER_CELSIUS;
        };
    }
}
