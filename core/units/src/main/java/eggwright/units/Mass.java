package eggwright.units;

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
        var typed = TypedNumber.read(text)
                .orElseThrow(() -> new OutOfRange(
                        QuantityReason.NOT_A_MASS, "\"" + text + "\" is not a mass. Write 31.2g or 1.1oz.", text));
        if (typed.unit().isEmpty()) {
            throw new OutOfRange(
                    QuantityReason.MASS_WITHOUT_UNIT, "\"" + text + "\" has no unit. Write 31.2g or 1.1oz.", text);
        }
        for (var unit : Unit.values()) {
            if (unit.symbol.equals(typed.unit())) {
                return new Mass(typed.number(), unit);
            }
        }
        throw new OutOfRange(
                QuantityReason.MASS_OF_OTHER_UNIT,
                "\"" + text + "\" has a unit that is not g, kg, oz or lb. Write 31.2g or 1.1oz.",
                text);
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
