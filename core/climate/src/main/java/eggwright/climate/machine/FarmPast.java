package eggwright.climate.machine;

import eggwright.climate.weight.Aim;
import eggwright.climate.weight.Shells;
import eggwright.trade.Species;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the farm's earlier sets of a species tell of the next: how leaky its shells are, and which losses hatched best.
 *
 * @param shells from the published to the farm's own, by how sure each is
 * @param aim the trade's band, or that of the farm's own best sets
 */
public record FarmPast(Shells shells, Aim aim) {
    /** Sets of one farm differ by less than birds do; with one set seen, by as much as eggs do: ours. */
    private static final double SETS_VARIATION = 0.15;

    /** However alike they were, the next may differ by so much: ours. */
    private static final double LEAST_VARIATION = 0.05;

    /**
     * A set that is over and was weighed.
     *
     * @param lossPct on the day that the trade's band speaks of
     * @param hatchOfFertilePct of what was not clear; empty where that is not known of this species alone
     */
    public record PastSet(double share, double lossPct, OptionalDouble hatchOfFertilePct) {}

    public static FarmPast of(Species species, List<PastSet> past) {
        var own = past.stream()
                .filter(set -> set.hatchOfFertilePct().isPresent())
                .map(set ->
                        new Aim.Hatched(set.lossPct(), set.hatchOfFertilePct().orElseThrow()))
                .toList();
        return new FarmPast(shells(Shells.published(species), past), Aim.of(species, own));
    }

    private static Shells shells(Shells published, List<PastSet> past) {
        if (past.isEmpty()) {
            return published;
        }
        double mean = past.stream().mapToDouble(PastSet::share).average().orElseThrow();
        double spread = SETS_VARIATION * mean;
        if (past.size() > 1) {
            double squares = past.stream()
                    .mapToDouble(set -> (set.share() - mean) * (set.share() - mean))
                    .sum();
            // Of the next set, not of their mean: a little more than the spread of those seen.
            spread = Math.sqrt(squares / (past.size() - 1) * (1 + 1.0 / past.size()));
        }
        double error = Math.hypot(spread, LEAST_VARIATION * mean);
        double own = 1 / (error * error);
        double others = 1 / (published.error() * published.error());
        return new Shells(
                (own * mean + others * published.share()) / (own + others),
                1 / Math.sqrt(own + others),
                Shells.From.EARLIER_SETS);
    }
}
