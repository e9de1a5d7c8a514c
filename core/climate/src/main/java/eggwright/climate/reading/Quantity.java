package eggwright.climate.reading;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a sensor measures. */
public enum Quantity {
    AIR_TEMPERATURE,
    WET_BULB,
    /** Of a probe on or in an egg. */
    EGG_TEMPERATURE,
    HUMIDITY,
    /** Of the air at the place, never reduced to sea level. */
    PRESSURE;

    /** The word of files and addresses, as {@code air_temperature}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Quantity> ofWord(String word) {
        return Arrays.stream(values()).filter(q -> q.word().equals(word)).findFirst();
    }

    public boolean isTemperature() {
        return switch (this) {
            case AIR_TEMPERATURE, WET_BULB, EGG_TEMPERATURE -> true;
            case HUMIDITY, PRESSURE -> false;
        };
    }
}
