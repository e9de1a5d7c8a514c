package eggwright.climate.machine;

import eggwright.book.name.SetName;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.excursion.NightCost;
import eggwright.trade.Species;
import java.util.List;

/**
 * A bad night of a machine.
 *
 * @param noted what somebody wrote of it; empty where only the readings tell
 * @param sets what it may have cost each set that stood in the machine, oldest first
 */
public record Night(Excursion excursion, How how, String noted, List<SetNight> sets) {
    public Night {
        sets = List.copyOf(sets);
    }

    /** How it is known. */
    public enum How {
        READINGS,
        /** Somebody noted an incident; nothing measured it. */
        NOTED
    }

    /** @param day of incubation on which it began */
    public record SetNight(SetName set, Species species, int day, NightCost cost) {}
}
