package eggwright.egg.air;

/**
 * How the air moves over the wick of a wet bulb, and with that its psychrometer coefficient A in
 * {@code e = es(wet) - A P (dry - wet)}. Why these two: decision 0088.
 */
public enum Ventilation {
    /**
     * Air drawn or blown over the wick at 2 to 3 m/s or more, as in a machine with a fan: 6.62e-4 per K, Assmann and
     * Sprung (an instrument's manual, read).
     */
    ASPIRATED(6.62e-4),

    /**
     * A wick in a machine without a fan: 8.0e-4 per K, from memory; 7.5e-4 to 8.0e-4 is usual, up to 1.2e-3 in air that
     * does not move at all.
     */
    STILL(8.0e-4);

    private final double perKelvin;

    Ventilation(double perKelvin) {
        this.perKelvin = perKelvin;
    }

    /** The psychrometer coefficient A, per K. */
    public double coefficientPerKelvin() {
        return perKelvin;
    }
}
