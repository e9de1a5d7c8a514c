package eggwright.stats.deathcurve;

import eggwright.units.OutOfRange;
import org.hipparchus.special.Gamma;

/**
 * A Weibull distribution of the day of death.
 *
 * @param shape above 0; below 1 the risk is greatest at the start
 * @param scaleDays above 0; by then 63.2 % have died
 */
public record Weibull(double shape, double scaleDays) {
    public Weibull {
        if (!(shape > 0 && scaleDays > 0 && shape < 1e6 && scaleDays < 1e6)) {
            throw new OutOfRange(
                    "A Weibull curve of shape " + shape + " and scale " + scaleDays + " days is outside above 0");
        }
    }

    /** Chance of having died by a day, 0 to 1. */
    public double diedBy(double day) {
        return -Math.expm1(-Math.pow(day / scaleDays, shape));
    }

    /** Chance per day of dying about a day above 0. */
    public double density(double day) {
        double t = day / scaleDays;
        return shape / scaleDays * Math.pow(t, shape - 1) * Math.exp(-Math.pow(t, shape));
    }

    public double meanDay() {
        return scaleDays * Gamma.gamma(1 + 1 / shape);
    }

    public double deviationDays() {
        double first = Gamma.gamma(1 + 1 / shape);
        return scaleDays * Math.sqrt(Gamma.gamma(1 + 2 / shape) - first * first);
    }
}
