package eggwright.climate.weight;

/**
 * A loss in percent of the set mass, with its 95 % interval.
 *
 * @param pct the best guess
 */
public record Estimate(double pct, double low, double high) {
    /** Of the normal distribution, for 95 in a hundred. */
    static final double DEVIATIONS = 1.959964;

    static Estimate of(double pct, double errorPct) {
        return new Estimate(pct, pct - DEVIATIONS * errorPct, pct + DEVIATIONS * errorPct);
    }

    double errorPct() {
        return (high - low) / 2 / DEVIATIONS;
    }
}
