package eggwright.stats.deathcurve;

import eggwright.units.OutOfRange;

/**
 * So many embryos that died after one day and by another: in (from, to].
 *
 * @param fromDay day after which they died, 0 or more
 * @param toDay day by which they had died, at least {@code fromDay}; the same: they died on that very day; infinite: they
 *     were alive on {@code fromDay} and nobody knows of a later death
 * @param count how many
 */
public record DeathInterval(double fromDay, double toDay, long count) {
    private static final double LAST_DAY = 1000;

    public DeathInterval {
        if (!(fromDay >= 0 && fromDay <= LAST_DAY)) {
            throw new OutOfRange("Day " + fromDay + " is outside 0 to " + LAST_DAY + " days");
        }
        if (!(toDay >= fromDay && (toDay <= LAST_DAY || toDay == Double.POSITIVE_INFINITY))) {
            throw new OutOfRange(
                    "Days " + fromDay + " to " + toDay + " are not in order, or outside 0 to " + LAST_DAY + " days");
        }
        if (!(toDay > 0)) {
            throw new OutOfRange("Day 0 to 0 holds no time to die in. Write 0 to 1 for the first day");
        }
        if (count < 0) {
            throw new OutOfRange("A count of " + count + " is outside 0 or more");
        }
    }

    /** Whether they were alive when last seen. */
    public boolean survived() {
        return toDay == Double.POSITIVE_INFINITY;
    }

    boolean isOneDay() {
        return fromDay == toDay;
    }
}
