package eggwright.units;

import java.util.List;

/**
 * What an instrument showed, or by how much it is off, kept with the number and the unit that a person typed: {@code 99.5F},
 * {@code -0.4C}, {@code 52%}, {@code 1002hPa}. Whether it is a value or a difference is said by whoever holds it.
 *
 * <p>Range: -10,000 to 10,000, wide enough that a slip of the unit is met where more is known.
 */
public record Amount(double number, Unit unit) {
    private static final double MOST = 10_000;
    /** Hectopascals in a conventional inch of mercury (ISO 80000-4). */
    private static final double INCH_HPA = 33.86388640341;

    /** Units that thermometers, hygrometers and barometers speak in. */
    public enum Unit {
        CELSIUS("C"),
        FAHRENHEIT("F"),
        PERCENT("%"),
        HECTOPASCAL("hPa"),
        MILLIBAR("mbar"),
        KILOPASCAL("kPa"),
        INCH_OF_MERCURY("inHg");

        private final String symbol;

        Unit(String symbol) {
            this.symbol = symbol;
        }

        public String symbol() {
            return symbol;
        }
    }

    public Amount {
        OutOfRange.check("Amount", number, -MOST, MOST, unit.symbol);
    }

    /**
     * Reads a number with one of the units.
     *
     * @throws OutOfRange if the text is not one
     */
    public static Amount parse(String text) {
        var typed = TypedNumber.read(
                text,
                "an amount",
                "99.5F, 37.5C, 52% or 1002hPa",
                List.of(Unit.values()),
                Unit::symbol,
                new TypedNumber.Refused(
                        QuantityReason.NOT_AN_AMOUNT,
                        QuantityReason.AMOUNT_WITHOUT_UNIT,
                        QuantityReason.AMOUNT_OF_OTHER_UNIT));
        return new Amount(typed.number(), typed.unit());
    }

    /** A value in degrees Celsius, percent or hectopascal. */
    public double standard() {
        return unit == Unit.FAHRENHEIT
                ? (number - Temperature.FAHRENHEIT_AT_ICE) / Temperature.FAHRENHEIT_PER_CELSIUS
                : standardDifference();
    }

    /** A difference in degrees Celsius, percent or hectopascal. */
    public double standardDifference() {
        return switch (unit) {
            case CELSIUS, PERCENT, HECTOPASCAL, MILLIBAR -> number;
            case FAHRENHEIT -> number / Temperature.FAHRENHEIT_PER_CELSIUS;
            case KILOPASCAL -> number * 10;
            case INCH_OF_MERCURY -> number * INCH_HPA;
        };
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        return number + unit.symbol;
    }
}
