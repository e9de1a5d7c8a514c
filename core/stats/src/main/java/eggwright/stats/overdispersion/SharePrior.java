package eggwright.stats.overdispersion;

import eggwright.units.OutOfRange;
import java.util.List;

/**
 * What is believed of a share before the farm's own groups are seen.
 *
 * @param mean the trade's share, above 0 and below 1
 * @param weightEggs how many eggs the belief in it is worth, 0.01 to 1 million
 * @param scatter amounts of scatter between groups, at least one
 */
public record SharePrior(double mean, double weightEggs, List<ScatterWeight> scatter) {
    public SharePrior {
        if (!(mean > 0 && mean < 1)) {
            throw new OutOfRange("A believed share of " + mean + " is outside 0 to 1, ends left out");
        }
        OutOfRange.check("A belief's weight of", weightEggs, 0.01, 1e6, "eggs");
        if (scatter.isEmpty()) {
            throw new OutOfRange("A belief names 0 amounts of scatter. Give at least 1");
        }
        scatter = List.copyOf(scatter);
    }

    /** With {@link ScatterWeight#usual()}. */
    public static SharePrior of(double mean, double weightEggs) {
        return new SharePrior(mean, weightEggs, ScatterWeight.usual());
    }
}
