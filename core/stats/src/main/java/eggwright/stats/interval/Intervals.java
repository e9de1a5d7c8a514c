package eggwright.stats.interval;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;

/**
 * Intervals round a proportion of whole counts that are alike and independent.
 *
 * <p>Range: 1 to 10 million trials; Wilson and Agresti-Coull, closed forms, any number. Error: ends within 1e-10 of R 4.2.2 on 120 cases of each method, as {@code
 * IntervalsReferenceTest} checks. Trays scatter more than luck allows, so for a farm of many trays these intervals are
 * too narrow; {@code eggwright.stats.overdispersion} answers for that.
 */
public final class Intervals {
    private static final long MOST_TRIALS = 10_000_000;

    private Intervals() {}

    /** Wilson's interval at 0.95: the one that stands beside every rate. */
    public static ProportionInterval wilson95(Rate rate) {
        return of(rate, IntervalMethod.WILSON, 0.95);
    }

    /**
     * The interval of a rate.
     *
     * <p>The estimate is x/n for every method, Agresti and Coull's too: their shifted middle shapes only the ends.
     * Their ends are not cut to 0 and 1, so that they can be compared with other programs; who shows them cuts them.
     *
     * @param rate x of n, with n at least 1
     * @param method how to find the ends
     * @param level share of such intervals that should hold the truth, above 0 and below 1
     * @throws OutOfRange if there are no trials, more than 10 million where the method has that range, or the level is not inside 0 to 1
     */
    public static ProportionInterval of(Rate rate, IntervalMethod method, double level) {
        if (rate.isEmpty()) {
            throw new OutOfRange("A rate of 0 of 0 has no interval: nothing was counted. Give at least 1 trial");
        }
        Level.check(level);
        return switch (method) {
            case WILSON -> wilson(rate, level);
            case JEFFREYS -> jeffreys(checked(rate), level);
            case CLOPPER_PEARSON -> clopperPearson(checked(rate), level);
            case AGRESTI_COULL -> agrestiCoull(rate, level);
        };
    }

    private static Rate checked(Rate rate) {
        if (rate.of() > MOST_TRIALS) {
            throw new OutOfRange("A rate of " + rate.of() + " trials is outside 1 to " + MOST_TRIALS
                    + " trials, the range of this method");
        }
        return rate;
    }

    private static ProportionInterval wilson(Rate rate, double level) {
        double n = rate.of();
        double p = rate.share();
        double z = Level.normalEnd(level);
        double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
        double half = z / (1 + z * z / n) * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n));
        // The ends at 0 of n and n of n are 0 and 1 exactly; the subtraction above would leave a rounding speck.
        double low = rate.count() == 0 ? 0 : Math.max(0, middle - half);
        double high = rate.count() == rate.of() ? 1 : Math.min(1, middle + half);
        return new ProportionInterval(p, low, high, IntervalMethod.WILSON, level);
    }

    private static ProportionInterval jeffreys(Rate rate, double level) {
        double yes = rate.count() + 0.5;
        double no = rate.of() - rate.count() + 0.5;
        double tail = (1 - level) / 2;
        double low = rate.count() == 0 ? 0 : BetaQuantile.lower(tail, yes, no);
        double high = rate.count() == rate.of() ? 1 : BetaQuantile.upper(tail, yes, no);
        return new ProportionInterval(rate.share(), low, high, IntervalMethod.JEFFREYS, level);
    }

    private static ProportionInterval clopperPearson(Rate rate, double level) {
        double x = rate.count();
        double n = rate.of();
        double tail = (1 - level) / 2;
        double low = rate.count() == 0 ? 0 : BetaQuantile.lower(tail, x, n - x + 1);
        double high = rate.count() == rate.of() ? 1 : BetaQuantile.upper(tail, x + 1, n - x);
        return new ProportionInterval(rate.share(), low, high, IntervalMethod.CLOPPER_PEARSON, level);
    }

    private static ProportionInterval agrestiCoull(Rate rate, double level) {
        double z = Level.normalEnd(level);
        double trials = rate.of() + z * z;
        double middle = (rate.count() + z * z / 2) / trials;
        double half = z * Math.sqrt(middle * (1 - middle) / trials);
        return new ProportionInterval(rate.share(), middle - half, middle + half, IntervalMethod.AGRESTI_COULL, level);
    }
}
