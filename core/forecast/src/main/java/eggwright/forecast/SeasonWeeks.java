package eggwright.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** The week of the season in which each set went in, 0 in the middle of a customary season. */
final class SeasonWeeks {
    /** Half of a season of twelve weeks: those published ran over ten (DW2001) and fourteen (FRONTE2010). */
    private static final double HALF = 6;

    /** Birds that lay the year round go down no further than a long season takes them: our assumption. */
    private static final double LONGEST = 16;

    /** So long without a set, and the next is of a new season: our assumption. */
    private static final long REST_DAYS = 60;

    private SeasonWeeks() {}

    /** @param setDays in order */
    static List<Double> of(List<LocalDate> setDays) {
        var weeks = new ArrayList<Double>();
        var first = LocalDate.MIN;
        var before = LocalDate.MIN;
        for (var day : setDays) {
            if (weeks.isEmpty() || ChronoUnit.DAYS.between(before, day) > REST_DAYS) {
                first = day;
            }
            weeks.add(Math.min(LONGEST, ChronoUnit.DAYS.between(first, day) / 7.0) - HALF);
            before = day;
        }
        return weeks;
    }
}
