package eggwright.rates;

import eggwright.book.picture.Fate;
import eggwright.stats.doublesampling.CorrectedShare;
import eggwright.units.Rate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The rates of one group.
 *
 * @param key as entered; keys joined by "+" where eggs were counted together
 * @param eggsSet eggs of this key alone; 0 for a joint group
 * @param fates eggs by fate, at the grain of the group
 * @param countedWithOthers eggs of this key whose fate is known only together with others'
 * @param fromOthers eggs of a joint group; {@code eggsSet + fromOthers = fates + countedWithOthers}
 * @param fertility fertile of eggs whose fertility was seen: eggs less infertile less unopened clears
 * @param apparentFertility the same by the lamp alone
 * @param trueFertility corrected for unopened clears by those that were opened; absent where none or all were
 * @param hatchOfSet saleable of eggs set, where taken off
 * @param hatchOfFertile saleable of fertile, where taken off
 * @param chicksOfSet all that left the shell of eggs set: saleable, culled and dead in the basket
 */
public record GroupRates(
        String key,
        int eggsSet,
        Map<Fate, Integer> fates,
        int countedWithOthers,
        int fromOthers,
        Basis basis,
        Rate fertility,
        Rate apparentFertility,
        @Nullable CorrectedShare trueFertility,
        Rate hatchOfSet,
        Rate hatchOfFertile,
        Rate chicksOfSet) {
    public GroupRates {
        fates = Map.copyOf(fates);
    }

    public int eggs(Fate fate) {
        return fates.getOrDefault(fate, 0);
    }

    public int stillIn() {
        return eggs(Fate.IN_SETTER) + eggs(Fate.IN_HATCHER);
    }

    /** Eggs whose fertility nobody saw: unopened cracked or rotten, removed unsorted, unaccounted. */
    public int undetermined() {
        return eggs(Fate.CRACKED) + eggs(Fate.ROT) + eggs(Fate.REMOVED_UNSORTED) + eggs(Fate.UNACCOUNTED);
    }
}
