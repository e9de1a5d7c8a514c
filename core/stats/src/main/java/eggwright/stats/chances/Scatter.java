package eggwright.stats.chances;

import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Level;
import eggwright.stats.interval.ProportionInterval;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.List;
import org.hipparchus.special.Beta;

/**
 * By how much units (trays) of the same group scatter beyond luck: Pearson's chi-square within groups over its degrees
 * of freedom. 1 is luck alone; a difference of two groups is then as sure as if each unit held that many times fewer
 * eggs.
 *
 * <p>Source: Wedderburn 1974, Biometrika 61:439; McCullagh and Nelder 1989, Generalized Linear Models, section 4.5 (from
 * memory). Error: within 1e-9 of an independent computation on the counts of Manly 1978, as {@code ScatterTest} checks.
 *
 * @param pearson chi-square over all units, each against its own group's share
 * @param degreesOfFreedom units less groups, of groups in which some did and some did not; 0: nothing can be said
 */
public record Scatter(double pearson, int degreesOfFreedom) {
    /** Units of each group; empty units, and groups where none or all did, say nothing. */
    public static Scatter within(List<List<Rate>> groups) {
        double sum = 0;
        int degrees = 0;
        for (var units : groups) {
            var all = units.stream().reduce(new Rate(0, 0), Rate::plus);
            double p = all.share();
            if (!(p > 0 && p < 1)) {
                continue;
            }
            int said = 0;
            for (var unit : units) {
                if (!unit.isEmpty()) {
                    double off = unit.count() - unit.of() * p;
                    sum += off * off / (unit.of() * p * (1 - p));
                    said++;
                }
            }
            degrees += said - 1;
        }
        return new Scatter(sum, degrees);
    }

    /** How many times larger the variance is than by luck, as estimated; not a number without degrees of freedom. */
    public double estimate() {
        return degreesOfFreedom == 0 ? Double.NaN : pearson / degreesOfFreedom;
    }

    /** The estimate, but never less than luck: less would claim more than the eggs can say. */
    public double factor() {
        return degreesOfFreedom == 0 ? 1 : Math.max(1, estimate());
    }

    /**
     * How often two groups of the same share would differ at least as far, with this scatter, 0 to 1: Student's t on the
     * degrees of freedom by which the scatter is known, so that a scatter learnt from few trays is believed less.
     *
     * @throws OutOfRange if nothing was counted on either side, or the scatter is not known at all
     */
    public double chance(Rate one, Rate other) {
        if (one.isEmpty() || other.isEmpty()) {
            throw new OutOfRange("A rate of 0 of 0 cannot be compared: nothing was counted");
        }
        if (degreesOfFreedom == 0) {
            throw new OutOfRange("0 degrees of freedom: the scatter between units is not known");
        }
        double pooled = one.plus(other).share();
        double variance = factor() * pooled * (1 - pooled) * (1.0 / one.of() + 1.0 / other.of());
        return variance > 0 ? beyond((one.share() - other.share()) / Math.sqrt(variance), degreesOfFreedom) : 1;
    }

    /** Wilson's interval of one share with this scatter: as if of so many times fewer eggs. */
    public ProportionInterval interval(Rate rate, double level) {
        double z = Level.normalEnd(level);
        double n = rate.of() / factor();
        double p = rate.share();
        double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
        double half = z / (1 + z * z / n) * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n));
        return new ProportionInterval(
                p, Math.max(0, middle - half), Math.min(1, middle + half), IntervalMethod.WILSON, level);
    }

    /** Student's t at least this far from 0, on either side. */
    private static double beyond(double t, int degrees) {
        return Beta.regularizedBeta(degrees / (degrees + t * t), degrees / 2.0, 0.5);
    }
}
