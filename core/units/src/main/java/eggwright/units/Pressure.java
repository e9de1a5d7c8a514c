package eggwright.units;

import java.util.List;

/**
 * A pressure of air or of the vapour in it, kept with the number and the unit that a person typed.
 *
 * <p>Range: 0 to 10,000 kPa, wide enough that a slip of the unit is met where more is known.
 */
public record Pressure(double number, Unit unit) {
    /** Standard pressure at sea level; exact by definition (ISO 2533:1975). */
    public static final Pressure SEA_LEVEL = new Pressure(101.325, Unit.KILOPASCAL);

    /** Kilopascals in a conventional millimetre of mercury, which trade papers also call a torr (ISO 80000-4). */
    private static final double MERCURY_MILLIMETRE_KPA = 0.133322387415;

    private static final double MILLIMETRES_PER_INCH = 25.4;

    /** What barometers, weather stations and papers on eggs speak in. */
    public enum Unit {
        KILOPASCAL("kPa", 1),
        HECTOPASCAL("hPa", 0.1),
        MILLIBAR("mbar", 0.1),
        INCH_OF_MERCURY("inHg", MILLIMETRES_PER_INCH * MERCURY_MILLIMETRE_KPA),
        MILLIMETRE_OF_MERCURY("mmHg", MERCURY_MILLIMETRE_KPA);

        private final String symbol;
        private final double kilopascals;

        Unit(String symbol, double kilopascals) {
            this.symbol = symbol;
            this.kilopascals = kilopascals;
        }

        public String symbol() {
            return symbol;
        }
    }

    public Pressure {
        OutOfRange.check("Pressure", number * unit.kilopascals, 0, 10_000, "kPa");
    }

    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(kilopascals, Unit.KILOPASCAL);
    }

    /**
     * Reads {@code 101.3kPa}, {@code 1013 hPa}, {@code 1013mbar}, {@code 29.92inHg} or {@code 760mmHg}.
     *
     * @throws OutOfRange if the text is not a number with one of these units
     */
    public static Pressure parse(String text) {
        var typed = TypedNumber.read(
                text,
                "a pressure",
                "101.3kPa or 29.9inHg",
                List.of(Unit.values()),
                Unit::symbol,
                new TypedNumber.Refused(
                        QuantityReason.NOT_A_PRESSURE,
                        QuantityReason.PRESSURE_WITHOUT_UNIT,
                        QuantityReason.PRESSURE_OF_OTHER_UNIT));
        return new Pressure(typed.number(), typed.unit());
    }

    public double kilopascals() {
        return number * unit.kilopascals;
    }

    public double hectopascals() {
        return in(Unit.HECTOPASCAL);
    }

    /** In millimetres of mercury, the torr of papers on eggs. */
    public double torr() {
        return in(Unit.MILLIMETRE_OF_MERCURY);
    }

    private double in(Unit wanted) {
        return unit == wanted ? number : kilopascals() / wanted.kilopascals;
    }

    /** The form that {@link #parse} reads. */
    @Override
    public String toString() {
        return number + unit.symbol();
    }
}
