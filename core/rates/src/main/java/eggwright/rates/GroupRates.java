package eggwright.rates;

import eggwright.book.picture.Fate;
import eggwright.stats.doublesampling.CorrectedShare;
import eggwright.stats.doublesampling.OpenedClears;
import eggwright.trade.Stage;
import eggwright.units.Rate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The rates of one group. Each rate is 0 of 0 where nothing can be said of this group alone; {@code
 * eggwright.stats.interval.Intervals.wilson95} puts its interval round it. Definitions: {@code docs/definitions.md}.
 *
 * @param key as entered; keys joined by "+" where eggs were counted together
 * @param keys the keys that are in it; one, but for a joint group
 * @param eggsSet eggs of this key alone; 0 for a joint group
 * @param fates eggs by fate, where the count speaks of this group alone
 * @param countedWithOthers eggs of this key whose fate is known only together with others'
 * @param fromOthers eggs of a joint group; {@code eggsSet + fromOthers = fates + countedWithOthers}, always
 * @param basis on what its fertility stands
 * @param fertility fertile of eggs whose fertility was seen: eggs less infertile less unopened clears
 * @param bounds of fertility, for the eggs whose fertility nobody saw
 * @param apparentFertility by the lamp alone: eggs looked at less clears
 * @param openedClears what was opened of the clears; absent where none was, or where no fertility was seen
 * @param hatchOfSet saleable of eggs set, where no egg is still in
 * @param hatchOfFertile saleable of fertile, where no egg is still in and fertility was seen of all
 * @param chicksOfSet all that left the shell of eggs set, where no egg is still in: saleable, culled, dead in the basket
 * @param saleableShare saleable of all that left the shell, where no egg is still in
 * @param losses each stage once, zeros kept, in the order of {@link Stage#losses()}
 */
public record GroupRates(
        String key,
        List<String> keys,
        int eggsSet,
        Map<Fate, Integer> fates,
        int countedWithOthers,
        int fromOthers,
        Basis basis,
        Rate fertility,
        FertilityBounds bounds,
        Rate apparentFertility,
        @Nullable OpenedClears openedClears,
        Rate hatchOfSet,
        Rate hatchOfFertile,
        Rate chicksOfSet,
        Rate saleableShare,
        List<StageLoss> losses) {
    private static final double LEVEL = 0.95;

    public GroupRates {
        keys = List.copyOf(keys);
        fates = Map.copyOf(fates);
        losses = List.copyOf(losses);
    }

    /** Whether it holds what was counted of several keys together. */
    public boolean isJoint() {
        return keys.size() > 1;
    }

    public int eggs(Fate fate) {
        return fates.getOrDefault(fate, 0);
    }

    public int stillIn() {
        return eggs(Fate.IN_SETTER) + eggs(Fate.IN_HATCHER);
    }

    /** Eggs whose fertility nobody saw: unopened cracked or rotten, removed unsorted, unaccounted. */
    public int undetermined() {
        return RateReport.UNDETERMINED.stream().mapToInt(this::eggs).sum();
    }

    /**
     * Fertility corrected by the opened clears for those that were not opened, with a 95 % interval that carries the
     * uncertainty of both; absent where no clear was opened. Worked out when asked for, since it takes a millisecond.
     */
    public @Nullable CorrectedShare trueFertility() {
        return openedClears == null ? null : openedClears.fertileShare(LEVEL);
    }

    public StageLoss loss(Stage stage) {
        return losses.stream().filter(l -> l.stage() == stage).findFirst().orElseThrow();
    }
}
