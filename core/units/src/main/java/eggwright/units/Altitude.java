package eggwright.units;

import java.util.List;

/**
 * Height of a place above mean sea level as a map gives it (geometric), kept with the number and the unit that a person
 * typed. Below the sea it is negative.
 *
 * <p>Range: 2,000 m below the sea, deeper than any farm, to 11,000 m above it, where the air of ISO 2533 stops cooling.
 */
public record Altitude(double number, Unit unit) {
    /** What maps give. The foot is the international one (1959), exact by definition. */
    public enum Unit {
        METRE("m", 1.0),
        FOOT("ft", 0.3048);

        private final String symbol;
        private final double metres;

        Unit(String symbol, double metres) {
            this.symbol = symbol;
            this.metres = metres;
        }

        public String symbol() {
            return symbol;
        }
    }

    public Altitude {
        OutOfRange.check("Altitude", number * unit.metres, -2000, 11_000, "m");
    }

    public static Altitude ofMetres(double metres) {
        return new Altitude(metres, Unit.METRE);
    }

    /**
     * Reads {@code 300m} or {@code 984 ft}; {@code -28m} is below the sea.
     *
     * @throws OutOfRange if the text is not a number with one of these units
     */
    public static Altitude parse(String text) {
        var typed = TypedNumber.read(
                text,
                "an altitude",
                "300m or 984ft",
                List.of(Unit.values()),
                Unit::symbol,
                new TypedNumber.Refused(
                        QuantityReason.NOT_AN_ALTITUDE,
                        QuantityReason.ALTITUDE_WITHOUT_UNIT,
                        QuantityReason.ALTITUDE_OF_OTHER_UNIT));
        return new Altitude(typed.number(), typed.unit());
    }

    public double metres() {
        return number * unit.metres;
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        return number + unit.symbol();
    }
}
