package eggwright.climate.weight;

import eggwright.trade.LossTarget;
import eggwright.trade.Species;
import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The band that a set should land in, and whose it is.
 *
 * @param bestSets how many of the farm's own sets it rests on; 0 where it is the trade's
 */
public record Aim(LossTarget band, Source source, int bestSets) {
    /** Fewer of the farm's own weighed and hatched sets say nothing: ours. */
    public static final int FEWEST_SETS = 6;

    /** A band narrower than that would be luck: ours. */
    private static final double LEAST_WIDTH_PCT = 1.5;

    /**
     * A set of this farm that was weighed and has hatched.
     *
     * @param pctAtTransfer what it had lost by the day that the trade's band speaks of
     * @param hatchOfFertilePct of what was not clear
     */
    public record Hatched(double pctAtTransfer, double hatchOfFertilePct) {}

    /** What the trade says. */
    public static Aim ofTrade(Species species) {
        Sourced<LossTarget> target = LossTarget.of(species);
        return new Aim(target.value(), target.source(), 0);
    }

    /**
     * What the farm's own best sets lost: from the least to the greatest of the better half by hatch of fertile, which is
     * taken from {@value #FEWEST_SETS} sets on. With fewer, the trade's.
     */
    public static Aim of(Species species, List<Hatched> own) {
        var trade = ofTrade(species);
        if (own.size() < FEWEST_SETS) {
            return trade;
        }
        var best = new ArrayList<>(own);
        best.sort(Comparator.comparingDouble(Hatched::hatchOfFertilePct).reversed());
        var losses = best.subList(0, (own.size() + 1) / 2).stream()
                .mapToDouble(Hatched::pctAtTransfer)
                .sorted()
                .toArray();
        // Without the outermost on either side where there are enough.
        int cut = losses.length >= 5 ? 1 : 0;
        double low = losses[cut];
        double high = losses[losses.length - 1 - cut];
        double widen = Math.max(0, LEAST_WIDTH_PCT - (high - low)) / 2;
        return new Aim(
                new LossTarget(
                        Math.max(0, low - widen),
                        high + widen,
                        trade.band().byDay(),
                        "The better half of this farm's sets by hatch of fertile."),
                new Source.Computed("from " + losses.length + " of this farm's " + own.size() + " weighed sets"),
                losses.length);
    }
}
