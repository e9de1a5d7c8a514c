package eggwright.stats.interval;

/**
 * A share and how far it may be off.
 *
 * @param estimate 0 to 1: those that did over those that could have, whatever the method
 * @param low lower end; 0 to 1, but for Agresti and Coull's method possibly below 0
 * @param high upper end; 0 to 1, but for Agresti and Coull's method possibly above 1
 * @param method how the ends were found
 * @param level share of such intervals that should hold the truth, above 0 and below 1
 */
public record ProportionInterval(double estimate, double low, double high, IntervalMethod method, double level) {
    /** Whether a share, 0 to 1, lies between the ends or on one. */
    public boolean holds(double share) {
        return low <= share && share <= high;
    }
}
