package eggwright.rates.candler.blind;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.name.PersonName;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookTaken;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * What one person saw at one look at one tray. Eggs that showed no finding are live; an egg wrong end up is a live egg
 * that lies wrong, and counts as live here.
 *
 * @param who looked
 * @param load the tray
 * @param on the farm's date
 * @param of whether every egg of the tray was looked at and sorted
 * @param eggs in the tray before the look
 * @param faults eggs by finding, without live ones; none of 0
 * @param places the finding of each place that was marked, by the number of the place, without live ones
 */
public record SeenAtLook(
        PersonName who,
        LoadRef load,
        LocalDate on,
        Reach of,
        int eggs,
        Map<Finding, Integer> faults,
        Map<Integer, Finding> places) {
    private static final Set<Finding> NO_FAULTS =
            Collections.unmodifiableSet(EnumSet.of(Finding.LIVE, Finding.WRONG_END_UP));

    /** How much of the tray a look speaks of. */
    public enum Reach {
        /** All eggs of this one tray, each sorted. */
        WHOLE_TRAY,
        /** A part of it, or several trays or baskets together. */
        NOT_THIS_TRAY_ALONE,
        /** Some eggs were taken out without a name for why. */
        UNSORTED
    }

    public SeenAtLook {
        faults = Map.copyOf(faults);
        places = Map.copyOf(places);
    }

    /**
     * From a look as the picture holds it.
     *
     * @param who noted the look
     * @param marked the finding of each place that was marked, by the number of the place; empty where none was
     */
    public static SeenAtLook of(PersonName who, LoadRef load, LookTaken taken, Map<Integer, Finding> marked) {
        var look = taken.look();
        var scope = look.scope();
        boolean alone = load.set().equals(scope.set())
                && load.tray().equals(scope.tray())
                && scope.pen() == null
                && scope.basket() == null
                && taken.lookedAt() == taken.inTheLoad();
        var faults = new EnumMap<Finding, Integer>(Finding.class);
        for (FindingCount count : look.findings()) {
            if (!NO_FAULTS.contains(count.finding()) && count.seen() > 0) {
                faults.merge(count.finding(), count.seen(), Integer::sum);
            }
        }
        var places = new HashMap<>(marked);
        places.values().removeIf(NO_FAULTS::contains);
        return new SeenAtLook(
                who,
                load,
                taken.at().toLocalDate(),
                !alone ? Reach.NOT_THIS_TRAY_ALONE : look.removedUnsorted() > 0 ? Reach.UNSORTED : Reach.WHOLE_TRAY,
                taken.inTheLoad(),
                faults,
                places);
    }

    /** Whether it is known of each egg what it showed: every fault has its place, or there is none. */
    public boolean isKnownEggByEgg() {
        var marked = new EnumMap<Finding, Integer>(Finding.class);
        places.values().forEach(finding -> marked.merge(finding, 1, Integer::sum));
        return marked.equals(faults);
    }

    /** Eggs that showed a finding; those without any fault for live. */
    public int seen(Finding finding) {
        return finding == Finding.LIVE
                ? eggs - faults.values().stream().mapToInt(Integer::intValue).sum()
                : faults.getOrDefault(finding, 0);
    }
}
