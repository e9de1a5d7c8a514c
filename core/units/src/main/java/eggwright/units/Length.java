package eggwright.units;

import java.util.List;

/**
 * A length of an egg or of its parts, kept with the number and the unit that a person typed.
 *
 * <p>Range: 0 to 1 m.
 */
public record Length(double number, Unit unit) {
    /** What callipers and rulers show. The inch is the international one (1959), exact by definition. */
    public enum Unit {
        MILLIMETRE("mm", 1.0),
        CENTIMETRE("cm", 10.0),
        INCH("in", 25.4);

        private final String symbol;
        private final double millimetres;

        Unit(String symbol, double millimetres) {
            this.symbol = symbol;
            this.millimetres = millimetres;
        }

        public String symbol() {
            return symbol;
        }
    }

    public Length {
        OutOfRange.check("Length", number * unit.millimetres, 0, 1000, "mm");
    }

    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres, Unit.MILLIMETRE);
    }

    /**
     * Reads {@code 45.5mm}, {@code 4.55 cm} or {@code 1.79in}.
     *
     * @throws OutOfRange if the text is not a number with one of these units
     */
    public static Length parse(String text) {
        var typed = TypedNumber.read(
                text,
                "a length",
                "45.5mm or 1.79in",
                List.of(Unit.values()),
                Unit::symbol,
                new TypedNumber.Refused(
                        QuantityReason.NOT_A_LENGTH,
                        QuantityReason.LENGTH_WITHOUT_UNIT,
                        QuantityReason.LENGTH_OF_OTHER_UNIT));
        return new Length(typed.number(), typed.unit());
    }

    public double millimetres() {
        return number * unit.millimetres;
    }

    public double centimetres() {
        return unit == Unit.CENTIMETRE ? number : millimetres() / Unit.CENTIMETRE.millimetres;
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        return number + unit.symbol();
    }
}
