package eggwright.stats.chances;

import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Intervals;
import eggwright.stats.interval.Level;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;

/**
 * One rate against another: by how much they differ, and how often luck alone would make them differ as much.
 *
 * <p>Both tests take eggs to be alike and independent; trays are not, so a small chance over few large trays proves
 * less than it seems. {@code eggwright.stats.overdispersion.LearntShare.chanceOfAsFar} asks the same of one group with
 * tray-to-tray scatter in it.
 *
 * @param difference first share less the second, -1 to 1
 * @param low lower end, Newcombe's hybrid score interval
 * @param high upper end
 * @param level share of such intervals that should hold the truth
 * @param z score statistic with the pooled share; its square is Pearson's chi-square; 0 where all or none of both did
 * @param scoreChance chance, 0 to 1, of a difference at least as far by luck, from z; for more than about 5 expected
 *     in each cell
 * @param exactChance the same by Fisher's exact test, two-sided: right for few eggs too, and then cautious
 */
public record RateDifference(
        double difference, double low, double high, double level, double z, double scoreChance, double exactChance) {

    /**
     * Compares two rates.
     *
     * <p>Source: Newcombe 1998, Stat. Med. 17:873, method 10. Error: within 1e-9 of R 4.2.2, as {@code
     * RateDifferenceReferenceTest} checks.
     *
     * @throws OutOfRange if nothing was counted on either side
     */
    public static RateDifference of(Rate one, Rate other, double level) {
        var a = Intervals.of(one, IntervalMethod.WILSON, level);
        var b = Intervals.of(other, IntervalMethod.WILSON, level);
        double difference = a.estimate() - b.estimate();
        double low = difference - Math.hypot(a.estimate() - a.low(), b.high() - b.estimate());
        double high = difference + Math.hypot(a.high() - a.estimate(), b.estimate() - b.low());
        double pooled = one.plus(other).share();
        double variance = pooled * (1 - pooled) * (1.0 / one.of() + 1.0 / other.of());
        double z = variance > 0 ? difference / Math.sqrt(variance) : 0;
        return new RateDifference(
                difference, low, high, level, z, Level.chanceBeyond(z), FisherExact.twoSided(one, other));
    }

    /** Whether the interval leaves 0 out: the rates differ by more than luck, at this level. */
    public boolean isMoreThanLuck() {
        return low > 0 || high < 0;
    }
}
