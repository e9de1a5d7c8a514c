package eggwright.units;

/**
 * A temperature, kept with the number and the unit that a person typed.
 *
 * <p>Range: absolute zero to 1000 °C. Conversion: F = 1.8 C + 32 (exact by definition).
 */
public record Temperature(double number, Scale scale) {
    /** Celsius degrees between absolute zero and the ice point; exact by definition (SI Brochure, 9th edition). */
    public static final double ZERO_CELSIUS_KELVIN = 273.15;

    /** Fahrenheit degrees at 0 °C; exact by definition. */
    public static final double FAHRENHEIT_AT_ICE = 32.0;
    /** Fahrenheit degrees in a difference of one Celsius degree; exact by definition. */
    public static final double FAHRENHEIT_PER_CELSIUS = 1.8;

    /** The two scales that incubators are read in, and the one of the handbooks of physics. */
    public enum Scale {
        CELSIUS("C"),
        FAHRENHEIT("F"),
        KELVIN("K");

        private final String letter;

        Scale(String letter) {
            this.letter = letter;
        }

        public String letter() {
            return letter;
        }

        private double celsius(double number) {
            return switch (this) {
                case CELSIUS -> number;
                case FAHRENHEIT -> (number - FAHRENHEIT_AT_ICE) / FAHRENHEIT_PER_CELSIUS;
                case KELVIN -> number - ZERO_CELSIUS_KELVIN;
            };
        }
    }

    public Temperature {
        OutOfRange.check("Temperature", scale.celsius(number), -ZERO_CELSIUS_KELVIN, 1000, "°C");
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius, Scale.CELSIUS);
    }

    public static Temperature ofFahrenheit(double fahrenheit) {
        return new Temperature(fahrenheit, Scale.FAHRENHEIT);
    }

    /**
     * Reads {@code 99.5F}, {@code 37.5 °C} or {@code 310.65K}.
     *
     * @throws OutOfRange if the text is not a number with one of the three units
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
            case "k" -> new Temperature(typed.number(), Scale.KELVIN);
            case "" ->
                throw new OutOfRange(
                        QuantityReason.TEMPERATURE_WITHOUT_UNIT,
                        "\"" + text + "\" has no unit. Write 99.5F or 37.5C.",
                        text);
            default ->
                throw new OutOfRange(
                        QuantityReason.TEMPERATURE_OF_OTHER_UNIT,
                        "\"" + text + "\" has a unit that is not F, C or K. Write 99.5F or 37.5C.",
                        text);
        };
    }

    public double celsius() {
        return scale.celsius(number);
    }

    public double fahrenheit() {
        return scale == Scale.FAHRENHEIT ? number : celsius() * FAHRENHEIT_PER_CELSIUS + FAHRENHEIT_AT_ICE;
    }

    public double kelvin() {
        return scale == Scale.KELVIN ? number : celsius() + ZERO_CELSIUS_KELVIN;
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        return number + scale.letter();
    }
}
