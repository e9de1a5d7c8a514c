package eggwright.invented.truth;

/**
 * Something that befalls a pen and changes its fertility.
 *
 * @param pen whose
 * @param what also decides whether the keeper notes it
 * @param day days after the first egg of the season
 * @param fertilityLogit the change once it is complete, in logits
 * @param overDays days over which the change builds up, for hens hold sperm for a while
 */
public record PenEventTruth(String pen, What what, int day, double fertilityLogit, int overDays) {
    /** What befell it. */
    public enum What {
        /** A cock goes lame or barren and nobody sees it. */
        COCK_FAILS,
        /** A cock dies; noted. */
        COCK_DIES,
        /** Other cocks come in; noted. */
        COCKS_EXCHANGED
    }

    public static final PenEventTruth PLAIN = new PenEventTruth("", What.COCK_FAILS, 30, -1.5, 10);

    public PenEventTruth {
        Within.range("day", day, 0, 365);
        Within.logit("fertility_logit", fertilityLogit);
        Within.range("over_days", overDays, 0, 60);
    }

    /** The change on a day, in logits. */
    public double logitOn(long on) {
        if (on < day) {
            return 0;
        }
        return overDays == 0 ? fertilityLogit : fertilityLogit * Math.min(1, (on - day + 1) / (double) overDays);
    }
}
