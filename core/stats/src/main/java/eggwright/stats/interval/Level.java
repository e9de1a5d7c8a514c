package eggwright.stats.interval;

import eggwright.units.OutOfRange;
import org.hipparchus.special.Erf;

/** The level of an interval: the share of such intervals that should hold the truth. */
public final class Level {
    private Level() {}

    /**
     * Refuses a level that is not strictly inside 0 to 1.
     *
     * @throws OutOfRange if it is not, or is not a number
     */
    public static double check(double level) {
        if (!(level > 0 && level < 1)) {
            throw new OutOfRange("An interval's level of " + level + " is outside 0 to 1 (0.95 is usual)");
        }
        return level;
    }

    /** The z whose central normal interval has this level: 1.96 for 0.95. */
    public static double normalEnd(double level) {
        return Math.sqrt(2) * Erf.erfInv(check(level));
    }

    /** The chance, 0 to 1, of a normal value at least this far from its mean in either direction. */
    public static double chanceBeyond(double z) {
        return Erf.erfc(Math.abs(z) / Math.sqrt(2));
    }
}
