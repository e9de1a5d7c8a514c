package eggwright.units;

/** Relative humidity of air over water, in percent. Range: 0 to 100. */
public record Humidity(double pct) {
    public Humidity {
        OutOfRange.check("Relative humidity", pct, 0, 100, "%");
    }
}
