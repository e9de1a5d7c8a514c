package eggwright.stats.deathcurve;

import eggwright.units.OutOfRange;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;

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

    /** The same deaths with each range of days once, its counts summed, in the order in which the ranges first come. */
    public static List<DeathInterval> joined(Collection<DeathInterval> intervals) {
        record Range(double fromDay, double toDay) {}
        var counts = new LinkedHashMap<Range, Long>();
        for (var each : intervals) {
            counts.merge(new Range(each.fromDay, each.toDay), each.count, Math::addExact);
        }
        return counts.entrySet().stream()
                .map(each -> new DeathInterval(each.getKey().fromDay, each.getKey().toDay, each.getValue()))
                .toList();
    }

    /** Whether they were alive when last seen. */
    public boolean survived() {
        return toDay == Double.POSITIVE_INFINITY;
    }

    boolean isOneDay() {
        return fromDay == toDay;
    }
}
