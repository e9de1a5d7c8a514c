package eggwright.stats.doublesampling;

import eggwright.units.OutOfRange;

/**
 * A share among all eggs, corrected by those that were opened, with the uncertainty of both samples in it.
 *
 * @param estimate 0 to 1
 * @param standardError large-sample standard error of the estimate; 0 where none or all, so trust the ends there
 * @param low lower end, 0 to 1
 * @param high upper end, 0 to 1
 * @param level share of such intervals that should hold the truth
 */
public record CorrectedShare(double estimate, double standardError, double low, double high, double level) {
    public CorrectedShare {
        if (!(0 <= low && low <= high && high <= 1)) {
            throw new OutOfRange("An interval from " + low + " to " + high + " is outside 0 to 1");
        }
    }

    /** The share of those that did not. */
    public CorrectedShare mirrored() {
        return new CorrectedShare(1 - estimate, standardError, 1 - high, 1 - low, level);
    }
}
