package eggwright.units;

/**
 * A temperature, kept with the number and the unit that a person typed.
 *
 * <p>Range: absolute zero to 1000 °C. Conversion: F = 1.8 C + 32 (exact by definition).
 */
public record Temperature(double number, Scale scale) {
    /** Celsius degrees between absolute zero and the ice point; exact by definition (SI Brochure, 9th edition). */
    public static final double ZERO_CELSIUS_KELVIN = 273.15;

    private static final double FAHRENHEIT_AT_ICE = 32.0;
    private static final double FAHRENHEIT_PER_CELSIUS = 1.8;

    /** The two scales that incubators are read in. */
    public enum Scale {
        CELSIUS("C"),
        FAHRENHEIT("F");

        private final String letter;

        Scale(String letter) {
            this.letter = letter;
        }

        public String letter() {
            return letter;
        }
    }

    public Temperature {
        var celsius = scale == Scale.CELSIUS ? number : (number - FAHRENHEIT_AT_ICE) / FAHRENHEIT_PER_CELSIUS;
        OutOfRange.check("Temperature", celsius, -ZERO_CELSIUS_KELVIN, 1000, "°C");
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius, Scale.CELSIUS);
    }

    public static Temperature ofFahrenheit(double fahrenheit) {
        return new Temperature(fahrenheit, Scale.FAHRENHEIT);
    }

    /**
     * Reads {@code 99.5F} or {@code 37.5 °C}.
     *
     * @throws OutOfRange if the text is not a number with one of the two units
     */
    public static Temperature parse(String text) {
        var typed = TypedNumber.read(text)
                .orElseThrow(() -> new OutOfRange(
                        QuantityReason.NOT_A_TEMPERATURE,
                        "\"" + text + "\" is not a temperature. Write 99.5F or 37.5C.",
                        text));
        return switch (typed.unit()) {
            case "c" -> ofCelsius(typed.number());
            case "f" -> ofFahrenheit(typed.number());
            case "" ->
                throw new OutOfRange(
                        QuantityReason.TEMPERATURE_WITHOUT_UNIT,
                        "\"" + text + "\" has no unit. Write 99.5F or 37.5C.",
                        text);
            default ->
                throw new OutOfRange(
                        QuantityReason.TEMPERATURE_OF_OTHER_UNIT,
                        "\"" + text + "\" has a unit that is not F or C. Write 99.5F or 37.5C.",
                        text);
        };
    }

    public double celsius() {
        return scale == Scale.CELSIUS ? number : (number - FAHRENHEIT_AT_ICE) / FAHRENHEIT_PER_CELSIUS;
    }

    public double fahrenheit() {
        return scale == Scale.FAHRENHEIT ? number : number * FAHRENHEIT_PER_CELSIUS + FAHRENHEIT_AT_ICE;
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        return number + scale.letter();
    }
}
