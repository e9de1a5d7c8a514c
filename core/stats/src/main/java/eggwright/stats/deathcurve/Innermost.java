package eggwright.stats.deathcurve;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The shortest ranges that the ends of all intervals leave, the only ones in which the likeliest curve can step, and which
 * intervals hold which of them. Source: Turnbull 1976, J. R. Stat. Soc. B 38:290 (from memory).
 */
final class Innermost {
    private static final int MOST = 400;
    /** Classes times ranges: what still fits a small machine's memory and patience. */
    private static final long MOST_HELD = 10_000_000;

    final List<DeathInterval> ranges = new ArrayList<>();
    final boolean[][] holds;

    /** An end of an interval. At the same day an exact day opens first, then ranges close, then ranges open after it. */
    private record End(double day, int kind) {
        static final int EXACT = 0;
        static final int CLOSES = 1;
    }

    Innermost(List<DeathInterval> intervals) {
        var ends = new ArrayList<End>();
        for (var interval : intervals) {
            ends.add(new End(interval.fromDay(), interval.isOneDay() ? End.EXACT : 2));
            ends.add(new End(interval.toDay(), End.CLOSES));
        }
        var sorted = ends.stream()
                .distinct()
                .sorted(Comparator.comparingDouble(End::day).thenComparingInt(End::kind))
                .toList();
        for (int i = 0; i + 1 < sorted.size(); i++) {
            if (sorted.get(i).kind != End.CLOSES && sorted.get(i + 1).kind == End.CLOSES) {
                ranges.add(new DeathInterval(sorted.get(i).day, sorted.get(i + 1).day, 0));
            }
        }
        if (ranges.size() > MOST) {
            throw new OutOfRange(ranges.size() + " different ranges of days are more than " + MOST
                    + ". Sort the deaths into fewer classes, as whole days");
        }
        if ((long) intervals.size() * ranges.size() > MOST_HELD) {
            throw new OutOfRange(intervals.size() + " different classes over " + ranges.size()
                    + " ranges of days are too many to work out. Sort the deaths into fewer classes, as whole days");
        }
        holds = new boolean[intervals.size()][ranges.size()];
        for (int i = 0; i < holds.length; i++) {
            for (int j = 0; j < ranges.size(); j++) {
                holds[i][j] = holds(intervals.get(i), ranges.get(j));
            }
        }
    }

    private static boolean holds(DeathInterval interval, DeathInterval range) {
        boolean startsBefore = range.isOneDay()
                ? interval.fromDay() < range.fromDay() || (interval.isOneDay() && interval.fromDay() == range.fromDay())
                : interval.fromDay() <= range.fromDay();
        return startsBefore && interval.toDay() >= range.toDay();
    }
}
