package eggwright.invented;

import eggwright.book.entry.Kept;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.units.OutOfRange;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;

/** A book of many plain seasons, one a year from 2001 on, for measuring. */
public final class BigBook {
    /** What fits before the names of the sets, which carry two digits of the year, come round again. */
    public static final int MOST_ENTRIES = 200_000;

    private static final int FIRST_YEAR = 2001;

    private BigBook() {}

    /**
     * So many entries, in the order in which the desk received them.
     *
     * @param entryCount 1 to {@value #MOST_ENTRIES}
     */
    public static List<Kept> of(int entryCount, long seed) {
        OutOfRange.check("Entries", entryCount, 1, MOST_ENTRIES, "entries");
        var entries = new ArrayList<Kept>(entryCount);
        for (int year = FIRST_YEAR; entries.size() < entryCount; year++) {
            var more = Season.of(Truth.PLAIN, seed + year, LocalDate.of(year, Month.MARCH, 8))
                    .entries();
            entries.addAll(more.subList(0, Math.min(more.size(), entryCount - entries.size())));
        }
        return List.copyOf(entries);
    }
}
