package eggwright.egg.air;

import eggwright.units.OutOfRange;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.Optional;

/**
 * Saturation over liquid water: the most vapour that air can hold.
 *
 * <p>Source: Wagner and Pruss 2002, J. Phys. Chem. Ref. Data 31:387, auxiliary equation (the article from memory; the
 * coefficients agree with steam tables that were read). Why this one: decision 0087.
 *
 * <p>Range: -50 to 100 °C. Error: within 0.01 % of IAPWS-95 from 0 to 50 °C, as {@code SaturationReferenceTest} checks.
 * Below 0 °C it speaks of water that has not frozen, and is up to 0.15 % above Sonntag 1990 at -50 °C; that part is there
 * for dew points of dry air. The enhancement factor of moist air (0.4 %) is left out everywhere, as in papers on eggs.
 */
public final class Saturation {
    /** Of liquid water, in °C, where the equation is used. */
    static final double COLDEST_CELSIUS = -50;

    static final double HOTTEST_CELSIUS = 100;

    private static final double CRITICAL_KELVIN = 647.096;
    private static final double CRITICAL_KPA = 22_064;
    private static final double[] FACTORS = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};
    private static final double[] POWERS = {1, 1.5, 3, 3.5, 4, 7.5};

    /** Magnus' form with the coefficients of WMO-No. 8, within 0.3 %: only where the search for a dew point starts. */
    private static final double MAGNUS_KPA = 0.6112;

    private static final double MAGNUS_SLOPE = 17.62;
    private static final double MAGNUS_CELSIUS = 243.12;
    private static final double CLOSE_CELSIUS = 1e-11;

    private Saturation() {}

    /**
     * Vapour pressure of air that is saturated over water.
     *
     * @throws OutOfRange if the temperature is outside -50 to 100 °C
     */
    public static Pressure over(Temperature water) {
        return Pressure.ofKilopascals(kilopascals(water.celsius()));
    }

    /**
     * How fast saturation rises, in kPa per °C: 0.3505, or 5.43 % of it, at 37.5 °C.
     *
     * @throws OutOfRange if the temperature is outside -50 to 100 °C
     */
    public static double slopeKilopascalsPerDegree(Temperature water) {
        double celsius = inside(water.celsius());
        return logSlope(celsius) * kilopascals(celsius);
    }

    /**
     * The temperature at which air with this vapour pressure is saturated; empty where the air is so dry that it would
     * be below -50 °C.
     *
     * @throws OutOfRange if the vapour pressure is above that of saturation at 100 °C
     */
    public static Optional<Temperature> dewPoint(Pressure vapour) {
        double kilopascals = vapour.kilopascals();
        if (kilopascals < kilopascals(COLDEST_CELSIUS)) {
            return Optional.empty();
        }
        OutOfRange.check("Vapour pressure", kilopascals, 0, kilopascals(HOTTEST_CELSIUS), "kPa");
        return Optional.of(Temperature.ofCelsius(dewPointCelsius(kilopascals)));
    }

    static double kilopascals(double celsius) {
        return CRITICAL_KPA * Math.exp(CRITICAL_KELVIN / kelvin(inside(celsius)) * sum(reduced(celsius)));
    }

    /**
     * Newton's method on the logarithm of the pressure. That is increasing and concave in temperature (its slope is the
     * heat of evaporation over R T²), so a tangent meets the wanted level left of the root: after one step the search
     * rises towards it and cannot leave the range.
     */
    private static double dewPointCelsius(double kilopascals) {
        double wanted = Math.log(kilopascals);
        double ratio = Math.log(kilopascals / MAGNUS_KPA);
        double celsius = clamped(MAGNUS_CELSIUS * ratio / (MAGNUS_SLOPE - ratio));
        double step;
        do {
            step = (wanted - Math.log(kilopascals(celsius))) / logSlope(celsius);
            celsius = clamped(celsius + step);
        } while (step > CLOSE_CELSIUS || step < -CLOSE_CELSIUS);
        return celsius;
    }

    /** Derivative of the logarithm of the pressure, per °C: d/dT of (Tc/T) f(v) with v = 1 - T/Tc. */
    private static double logSlope(double celsius) {
        double kelvin = kelvin(celsius);
        double v = reduced(celsius);
        double sumSlope = 0;
        for (int i = 0; i < FACTORS.length; i++) {
            sumSlope += FACTORS[i] * POWERS[i] * Math.pow(v, POWERS[i] - 1);
        }
        return -(CRITICAL_KELVIN * sum(v) / kelvin + sumSlope) / kelvin;
    }

    private static double sum(double v) {
        double sum = 0;
        for (int i = 0; i < FACTORS.length; i++) {
            sum += FACTORS[i] * Math.pow(v, POWERS[i]);
        }
        return sum;
    }

    private static double reduced(double celsius) {
        return 1 - kelvin(celsius) / CRITICAL_KELVIN;
    }

    private static double kelvin(double celsius) {
        return celsius + Temperature.ZERO_CELSIUS_KELVIN;
    }

    private static double clamped(double celsius) {
        return Math.clamp(celsius, COLDEST_CELSIUS, HOTTEST_CELSIUS);
    }

    private static double inside(double celsius) {
        return OutOfRange.check("Temperature", celsius, COLDEST_CELSIUS, HOTTEST_CELSIUS, "°C");
    }
}
