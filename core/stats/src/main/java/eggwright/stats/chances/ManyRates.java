package eggwright.stats.chances;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.List;
import org.hipparchus.special.Gamma;

/**
 * Whether many rates differ among each other by more than luck: Pearson's chi-square.
 *
 * @param chiSquare sum of (seen - expected)^2 / expected; 0 where all or none of all groups did
 * @param degreesOfFreedom groups less one
 * @param chance chance, 0 to 1, of differences at least as large by luck
 * @param leastExpected smallest expected count; below about 5 the chance is only rough
 */
public record ManyRates(double chiSquare, int degreesOfFreedom, double chance, double leastExpected) {
    /**
     * Compares two or more rates, each of at least one. Source: Pearson 1900. Error: within 1e-9 of R.
     *
     * @throws OutOfRange if there are fewer than two groups or one without any eggs
     */
    public static ManyRates of(List<Rate> rates) {
        if (rates.size() < 2) {
            throw new OutOfRange(rates.size() + " groups cannot be compared. Give at least 2");
        }
        var all = new Rate(0, 0);
        for (var rate : rates) {
            if (rate.isEmpty()) {
                throw new OutOfRange("A group of 0 eggs cannot be compared. Leave it out");
            }
            all = all.plus(rate);
        }
        double p = all.share();
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        for (var rate : rates) {
            double off = rate.count() - rate.of() * p;
            sum += p * (1 - p) > 0 ? off * off / (rate.of() * p * (1 - p)) : 0;
            least = Math.min(least, rate.of() * Math.min(p, 1 - p));
        }
        int degrees = rates.size() - 1;
        double chance = sum > 0 ? Gamma.regularizedGammaQ(degrees / 2.0, sum / 2) : 1;
        return new ManyRates(sum, degrees, chance, least);
    }
}
