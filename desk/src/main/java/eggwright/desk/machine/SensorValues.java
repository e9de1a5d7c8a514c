package eggwright.desk.machine;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingUnit;
import eggwright.units.Temperature;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What sensors read and differ by, worded: temperatures in the farm's degrees, all to a tenth. */
record SensorValues(Degrees degrees) {
    private static final String SPACE = "\u00a0";

    /** As it came, in the sensor's own unit. */
    String asRead(Channel channel, double read) {
        return degrees.number(read) + SPACE + channel.unit().sign();
    }

    /** Degrees Celsius, percent or hectopascal. */
    String value(Quantity quantity, double standard) {
        return quantity.isTemperature() ? degrees.say(standard) : degrees.number(standard) + SPACE + sign(quantity);
    }

    /** By how much, with its sign. */
    String difference(Quantity quantity, double standard) {
        double shown = Math.rint(own(quantity, standard) * 10) / 10;
        var sign = shown > 0 ? "+" : shown < 0 ? "−" : "";
        return sign + size(quantity, standard);
    }

    /** By how much, either way. */
    String size(Quantity quantity, double standard) {
        return degrees.number(Math.abs(own(quantity, standard)))
                + SPACE
                + (quantity.isTemperature() ? degrees.sign() : sign(quantity));
    }

    /** As a person would type what the sensor itself showed. */
    String typed(Channel channel, double read) {
        return plain(read)
                + switch (channel.unit()) {
                    case CELSIUS -> "C";
                    case FAHRENHEIT -> "F";
                    case PERCENT -> "%";
                    case HECTOPASCAL -> "hPa";
                };
    }

    /** The same of a value in standard units. */
    String typedStandard(Channel channel, double standard) {
        return typed(
                channel,
                channel.unit() == ReadingUnit.FAHRENHEIT
                        ? Temperature.ofCelsius(standard).fahrenheit()
                        : standard);
    }

    private double own(Quantity quantity, double standard) {
        return quantity.isTemperature() && degrees.isFahrenheit()
                ? standard * Temperature.FAHRENHEIT_PER_CELSIUS
                : standard;
    }

    private static String sign(Quantity quantity) {
        return quantity == Quantity.HUMIDITY ? "%" : "hPa";
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number)
                .setScale(1, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
