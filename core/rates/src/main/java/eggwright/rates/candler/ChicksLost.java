package eggwright.rates.candler;

/**
 * What false clears cost in chicks: eggs times the hatch of fertile of the rest. Fractions are kept. The hatch is taken
 * as it stands; it counts from all fertile eggs, so that an egg that had come as far as the look would have hatched
 * rather more often.
 *
 * @param known of the eggs that were opened
 * @param unopened of the clears that were not opened, if they were like those that were
 * @param unopenedLow the same, at the lower end of the false-clear rate
 * @param unopenedHigh at its upper end
 */
public record ChicksLost(double known, double unopened, double unopenedLow, double unopenedHigh) {
    /** All together. */
    public double all() {
        return known + unopened;
    }

    /** All together, at the lower end. */
    public double low() {
        return known + unopenedLow;
    }

    /** All together, at the upper end. */
    public double high() {
        return known + unopenedHigh;
    }
}
