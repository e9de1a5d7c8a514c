package eggwright.today.eggroom;

import java.util.Locale;

/** How the age of stored eggs stands to the advice for their species. */
public enum Storage {
    /** The lay dates are not known. */
    AGE_NOT_KNOWN,
    WITHIN,
    /** The last day of the advice comes today or tomorrow. */
    NEAR_ADVISED,
    OVER_ADVISED,
    /** Past the advice, and the last day of the limit comes today or tomorrow. */
    NEAR_LIMIT,
    OVER_LIMIT;

    /** For message keys. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * @param days age of the oldest egg
     * @param advisedDays up to which storage costs little
     * @param limitDays beyond which few hatch
     */
    static Storage of(long days, double advisedDays, double limitDays) {
        if (days > limitDays) {
            return OVER_LIMIT;
        }
        if (days > advisedDays) {
            return days > limitDays - 2 ? NEAR_LIMIT : OVER_ADVISED;
        }
        return days > advisedDays - 2 ? NEAR_ADVISED : WITHIN;
    }

    /** Whether the advice was overstepped, and the limit not. */
    public boolean waitsTooLong() {
        return this == OVER_ADVISED || this == NEAR_LIMIT;
    }
}
