package eggwright.units;

import java.util.List;

/**
 * A mass of eggs or of a tray, kept with the number and the unit that a person typed.
 *
 * <p>Range: 0 to 1,000 kg.
 */
public record Mass(double number, Unit unit) {
    /** What scales on farms show. Pound and ounce are the international avoirdupois ones (1959), exact by definition. */
    public enum Unit {
        GRAM("g", 1.0),
        KILOGRAM("kg", 1000.0),
        OUNCE("oz", 28.349523125),
        POUND("lb", 453.59237);

        private final String symbol;
        private final double grams;

        Unit(String symbol, double grams) {
            this.symbol = symbol;
            this.grams = grams;
        }

        public String symbol() {
            return symbol;
        }
    }

    public Mass {
        OutOfRange.check("Mass", number * unit.grams, 0, 1_000_000, "g");
    }

    public static Mass ofGrams(double grams) {
        return new Mass(grams, Unit.GRAM);
    }

    /**
     * Reads {@code 31.2g}, {@code 1.1oz}, {@code 2.4kg} or {@code 5 lb}.
     *
     * @throws OutOfRange if the text is not a number with one of these units
     */
    public static Mass parse(String text) {
        var typed = TypedNumber.read(
                text,
                "a mass",
                "31.2g or 1.1oz",
                List.of(Unit.values()),
                Unit::symbol,
                new TypedNumber.Refused(
                        QuantityReason.NOT_A_MASS,
                        QuantityReason.MASS_WITHOUT_UNIT,
                        QuantityReason.MASS_OF_OTHER_UNIT));
        return new Mass(typed.number(), typed.unit());
    }

    public double grams() {
        return number * unit.grams;
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        return number + unit.symbol();
    }
}
