package eggwright.climate.machine;

import eggwright.book.name.SetName;
import eggwright.climate.excursion.Excursion;
import eggwright.climate.excursion.NightCost;
import eggwright.trade.Species;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
        /** Somebody noted an incident, and how far the air went. */
        READ_BY_HAND,
        /** Somebody noted an incident; nothing measured it. */
        NOTED
    }

    /**
     * What one set went through.
     *
     * @param day of incubation on which it began
     * @param cost reckoned
     * @param known what was counted since; absent until something was
     */
    public record SetNight(
            SetName set,
            Species species,
            int day,
            NightCost cost,
            @Nullable Aftermath known) {
        /** What was counted since. */
        public Optional<Aftermath> since() {
            return Optional.ofNullable(known);
        }
    }
}
