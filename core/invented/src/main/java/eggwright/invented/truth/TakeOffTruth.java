package eggwright.invented.truth;

/**
 * How chicks are taken off.
 *
 * @param countedBy what is counted together
 * @param pulls 1 to 3
 * @param brokenOutPct of those counted together, how often what is left is opened
 * @param lastPullHoursLater by how much the last pull is put off beyond the morning of the day that the species' dates name
 */
public record TakeOffTruth(CountedBy countedBy, int pulls, double brokenOutPct, int lastPullHoursLater) {
    /** What is counted together. */
    public enum CountedBy {
        LOAD,
        /** Two loads share a hatcher basket. */
        BASKET,
        /** Sets of one species each. */
        SET
    }

    public static final TakeOffTruth PLAIN = new TakeOffTruth(CountedBy.LOAD, 2, 75, 0);

    public TakeOffTruth {
        Within.range("pulls", pulls, 1, 3);
        Within.pct("broken_out_pct", brokenOutPct);
        Within.range("last_pull_hours_later", lastPullHoursLater, 0, 72);
    }
}
