package eggwright.climate.development;

import eggwright.units.OutOfRange;

/**
 * How fast an embryo develops at an egg temperature, as a share of its rate at the temperature for which its period is
 * given.
 *
 * <p>Range: 0 to 60 °C. Model: {@code r(T) = (T - 20) / (reference - 20)}. Its base of 20 °C (19 to 21, from the rounding of
 * the periods) is worked out from one experiment with bobwhite eggs, 23.2 days at 37.5 °C and 24.8 days where the first
 * 14 days were at 35.5 °C (Birchard, SICB annual-meeting abstract, seen), and held against another: ducks at 38.3 °C hatched a day sooner
 * (Wells-Berlin, Prince and Arnold 2005, Condor 107:926, abstract seen), predicted 1.1 days. Made for 35.5 to 38.3 °C; used
 * as it stands from 34 to 39.
 *
 * <p>Outside, little is known, and the span says so. Growth stops below 26 °C or so (stopped at 22 °C: Feast and others
 * 1998, abstract seen; thresholds of 19 to 27 °C are in use): likely 0. From 26 to 34 °C no data were found: likely a
 * straight line, which is a filler of ours. Above 39 °C heat delays as well as hurries (Romanoff 1935, extract seen): likely
 * no faster than at 39 °C. In the last 15 % of development (ours) the temperature matters less, for the embryo heats itself: partridges did
 * not mind 37.0 to 37.8 °C in their last three days (RLP-TEMP, abstract seen), broilers at 36.7 instead of 37.8 °C in their last week were
 * eight hours later (Poultry Science 99:3897, 2020, table seen): likely half the effect, between none and all of it.
 */
public final class DevelopmentRate {
    private static final double BASE = 20;
    private static final double LEAST_BASE = 19;
    private static final double GREATEST_BASE = 21;
    private static final double STOPPED_BELOW = 26;
    private static final double SURELY_SLOW_BELOW = 30;
    private static final double KNOWN_FROM = 34;
    private static final double KNOWN_TO = 39;
    /** Ours: how fast the lower end falls for each degree above 39 °C. */
    private static final double FALL_IN_HEAT = 0.25;

    private static final double LATE_FROM = 0.85;
    private static final double LATE_EFFECT = 0.5;

    private DevelopmentRate() {}

    /**
     * @param eggCelsius temperature of the egg
     * @param referenceCelsius the temperature for which the period is given
     * @param developed how far it has come, 0 at the set to 1 at hatch
     * @throws OutOfRange if a temperature is outside 0 to 60 °C, or the reference outside 34 to 39
     */
    public static Span at(double eggCelsius, double referenceCelsius, double developed) {
        OutOfRange.check("Egg temperature", eggCelsius, 0, 60, "°C");
        OutOfRange.check("Reference temperature", referenceCelsius, KNOWN_FROM, KNOWN_TO, "°C");
        var span = at(eggCelsius, referenceCelsius);
        return developed >= LATE_FROM && eggCelsius >= KNOWN_FROM && eggCelsius <= KNOWN_TO ? late(span) : span;
    }

    private static Span at(double t, double reference) {
        double linear = linear(t, reference, BASE);
        if (t < STOPPED_BELOW) {
            return new Span(0, 0, Math.max(0, linear));
        }
        if (t < KNOWN_FROM) {
            double top = linear(KNOWN_FROM, reference, BASE);
            double likely = top * (t - STOPPED_BELOW) / (KNOWN_FROM - STOPPED_BELOW);
            double low = low(KNOWN_FROM, reference)
                    * Math.max(0, (t - SURELY_SLOW_BELOW) / (KNOWN_FROM - SURELY_SLOW_BELOW));
            return new Span(Math.min(low, likely), likely, Math.max(likely, linear));
        }
        if (t <= KNOWN_TO) {
            return new Span(low(t, reference), linear, high(t, reference));
        }
        double likely = linear(KNOWN_TO, reference, BASE);
        return new Span(Math.max(0, Math.min(likely, 1 - FALL_IN_HEAT * (t - KNOWN_TO))), likely, high(t, reference));
    }

    private static double low(double t, double reference) {
        return Math.min(linear(t, reference, LEAST_BASE), linear(t, reference, GREATEST_BASE));
    }

    private static double high(double t, double reference) {
        return Math.max(linear(t, reference, LEAST_BASE), linear(t, reference, GREATEST_BASE));
    }

    /** (5.1) */
    private static double linear(double t, double reference, double base) {
        return (t - base) / (reference - base);
    }

    /** The rate is drawn towards 1 by half, and may be 1 or as it was. */
    private static Span late(Span span) {
        return new Span(Math.min(1, span.low()), 1 + LATE_EFFECT * (span.likely() - 1), Math.max(1, span.high()));
    }
}
