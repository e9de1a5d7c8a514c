package eggwright.stats.predictive;

/**
 * An equal-tailed range of whole counts.
 *
 * @param low lowest count inside
 * @param high highest count inside
 * @param level chance, 0 to 1, that was asked for; whole counts make the true chance a little higher
 */
public record CountInterval(int low, int high, double level) {
    /** Whether a count lies inside, ends included. */
    public boolean holds(int count) {
        return low <= count && count <= high;
    }
}
