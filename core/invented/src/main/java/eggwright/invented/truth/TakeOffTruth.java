package eggwright.invented.truth;

/**
 * How chicks are taken off.
 *
 * @param countedBy what is counted together
 * @param pulls 1 to 3
 * @param brokenOutPct of those counted together, how often what is left is opened
 */
public record TakeOffTruth(CountedBy countedBy, int pulls, double brokenOutPct) {
    /** What is counted together. */
    public enum CountedBy {
        LOAD,
        /** Two loads share a hatcher basket. */
        BASKET,
        /** Sets of one species each. */
        SET
    }

    public static final TakeOffTruth PLAIN = new TakeOffTruth(CountedBy.LOAD, 2, 75);

    public TakeOffTruth {
        Within.range("pulls", pulls, 1, 3);
        Within.pct("broken_out_pct", brokenOutPct);
    }
}
