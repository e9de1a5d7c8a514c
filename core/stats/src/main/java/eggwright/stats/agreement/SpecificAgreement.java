package eggwright.stats.agreement;

import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Intervals;
import eggwright.stats.interval.Level;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;

/**
 * Agreement on one finding: when one look says so, how often does the other. It leaves out the eggs that neither look
 * called so, and so is not flattered by a tray full of live eggs.
 *
 * <p>With a eggs called so by both and d by one of them only: 2a / (2a + d). Source: Cicchetti and Feinstein 1990, J.
 * Clin. Epidemiol. 43:551, for two categories; Fleiss 1975, Biometrics 31:651 (both from memory); for more, each
 * category stands against all others together. Standard error: delta method, 2 sqrt(a d (a + d)) / (2a + d)^2, as Graham
 * and Bull 1998, J. Clin. Epidemiol. 51:763 (from memory; derived again in {@code docs/models/agreement.md}).
 *
 * <p>Limits: 2q / (1 + q) rises with q = a / (a + d), the share agreed among eggs that either look called so, so that
 * Wilson's limits of q are carried over. To first order that is the delta method's interval, but it stays inside 0 to 1
 * and keeps its width where all or none agreed. The joining of the two is ours.
 *
 * @param category the finding
 * @param agreed eggs that both looks called so, a
 * @param differed eggs that one look called so and the other not, d
 */
public record SpecificAgreement(String category, long agreed, long differed) {
    /** A share with its limits, 0 to 1. */
    public record Interval(double low, double high, double level) {}

    public SpecificAgreement {
        if (!(agreed >= 0 && differed >= 0)) {
            throw new OutOfRange(
                    "Agreement on " + category + " of " + agreed + " and " + differed + " eggs is outside 0 or more");
        }
    }

    /** Whether neither look called any egg so: nothing can be said. */
    public boolean isEmpty() {
        return agreed + differed == 0;
    }

    /** 0 to 1; not a number where neither look called any egg so. */
    public double estimate() {
        return isEmpty() ? Double.NaN : 2.0 * agreed / (2.0 * agreed + differed);
    }

    /** Large-sample standard error; 0 where all or none agreed; not a number where neither look called any egg so. */
    public double standardError() {
        double a = agreed;
        double d = differed;
        return isEmpty() ? Double.NaN : 2 * Math.sqrt(a * d * (a + d)) / ((2 * a + d) * (2 * a + d));
    }

    /**
     * The limits.
     *
     * @throws OutOfRange if neither look called any egg so, or the level is not inside 0 to 1
     */
    public Interval interval(double level) {
        Level.check(level);
        if (isEmpty()) {
            throw new OutOfRange("Neither look called any egg " + category + ": agreement on it cannot be told");
        }
        var either = Intervals.of(new Rate(agreed, agreed + differed), IntervalMethod.WILSON, level);
        return new Interval(carried(either.low()), carried(either.high()), level);
    }

    private static double carried(double either) {
        return 2 * either / (1 + either);
    }
}
