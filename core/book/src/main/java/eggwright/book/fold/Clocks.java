package eggwright.book.fold;

import eggwright.book.entry.HabitsNoted;
import eggwright.book.picture.FarmClock;
import java.time.ZoneId;
import java.util.TreeSet;

/** The notes that set the farm's clock; the last of them holds. */
final class Clocks {
    private final TreeSet<Effective> settings = new TreeSet<>();
    private FarmClock clock = FarmClock.NOT_NOTED;
    private int turns;

    FarmClock clock() {
        return clock;
    }

    /** How often the clock was set: also when it came back to what it was, for something was told in between. */
    int turns() {
        return turns;
    }

    void add(Effective entry) {
        if (entry.payload() instanceof HabitsNoted it && it.timeZone() != null) {
            settings.add(entry);
            tell();
        }
    }

    void remove(Effective entry) {
        if (settings.remove(entry)) {
            tell();
        }
    }

    private void tell() {
        var was = clock;
        clock = !settings.isEmpty() && settings.last().payload() instanceof HabitsNoted it && it.timeZone() != null
                ? FarmClock.of(ZoneId.of(it.timeZone()))
                : FarmClock.NOT_NOTED;
        turns += clock.equals(was) ? 0 : 1;
    }
}
