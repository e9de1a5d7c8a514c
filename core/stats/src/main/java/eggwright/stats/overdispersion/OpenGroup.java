package eggwright.stats.overdispersion;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;

/**
 * A group of which some eggs are still to come.
 *
 * @param seen what was seen of it so far, and was learnt from; 0 of 0 for a new group
 * @param further eggs to predict
 */
public record OpenGroup(Rate seen, int further) {
    public OpenGroup {
        OutOfRange.check("A count of", further, 0, 10_000_000, "eggs");
    }

    public static OpenGroup ofNew(int eggs) {
        return new OpenGroup(new Rate(0, 0), eggs);
    }
}
