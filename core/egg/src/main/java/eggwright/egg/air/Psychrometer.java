package eggwright.egg.air;

import eggwright.units.OutOfRange;
import eggwright.units.Pressure;
import eggwright.units.Temperature;

/**
 * The psychrometer equation {@code e = es(wet) - A P (dry - wet)}, both ways.
 *
 * <p>Range: dry bulb 0 to 60 °C, wet bulb not frozen, pressure 30 to 120 kPa. Error: within 0.05 points of humidity of the
 * same equation on IAPWS saturation, within 0.7 of the thermodynamic wet bulb, within 1.05 of the tables of the US
 * Weather Bureau (1897), as {@code PsychrometerReferenceTest} checks. A dirty or short wick reads too high and is not
 * in these figures.
 */
final class Psychrometer {
    private static final double CLOSE_CELSIUS = 1e-11;

    private Psychrometer() {}

    /** Vapour pressure in kPa; at or below zero where no air can give these two readings. */
    static double vapourKilopascals(double dry, double wet, double barometerKilopascals, Ventilation ventilation) {
        return Saturation.kilopascals(wet) - ventilation.coefficientPerKelvin() * barometerKilopascals * (dry - wet);
    }

    /**
     * The wet bulb that air shows, in °C. Newton's method from the dry bulb downwards: the equation's left side less its
     * right side is increasing and convex in the wet bulb, and not below zero at the dry bulb, so the search falls
     * towards the root and never passes it.
     *
     * @throws OutOfRange if the wick would freeze
     */
    static double wetBulbCelsius(double dry, double vapour, double barometerKilopascals, Ventilation ventilation) {
        double slope = ventilation.coefficientPerKelvin() * barometerKilopascals;
        double frost = vapourKilopascals(dry, 0, barometerKilopascals, ventilation);
        if (!(vapour >= frost)) {
            throw new OutOfRange("This air would show a wet bulb below 0 °C (32 °F), where the wick freezes and the"
                    + " equation does not hold");
        }
        double wet = dry;
        double step;
        do {
            var water = Temperature.ofCelsius(wet);
            step = (vapourKilopascals(dry, wet, barometerKilopascals, ventilation) - vapour)
                    / (Saturation.slopeKilopascalsPerDegree(water) + slope);
            wet = Math.clamp(wet - step, 0, dry);
        } while (step > CLOSE_CELSIUS);
        return wet;
    }

    static Pressure checked(Pressure barometer) {
        OutOfRange.check("Air pressure", barometer.kilopascals(), MoistAir.THINNEST_KPA, MoistAir.DENSEST_KPA, "kPa");
        return barometer;
    }
}
