package eggwright.egg.shell;

import eggwright.egg.shell.Diffusion.Conditions;
import eggwright.units.OutOfRange;
import eggwright.units.Pressure;

/**
 * How much water vapour a shell lets out, at {@link Conditions#REFERENCE}: mass lost a day for each unit of vapour pressure
 * by which the egg exceeds the air. Of one egg, or of all eggs of a tray together.
 *
 * <p>Source: Ar and others 1974, Condor 76:153 (opening read): dW/dt = -G (es(egg) - e(air)). G does not depend on the mass
 * left, so steady loss is a straight line in time.
 *
 * @param milligramsPerDayKilopascal above 0
 */
public record Conductance(double milligramsPerDayKilopascal) {
    private static final double KILOPASCALS_PER_TORR =
            new Pressure(1, Pressure.Unit.MILLIMETRE_OF_MERCURY).kilopascals();

    public Conductance {
        OutOfRange.check("Conductance", milligramsPerDayKilopascal, Double.MIN_VALUE, 1e9, "mg/(day kPa)");
    }

    /** From the unit of papers on eggs, mg/(day torr); 1 torr = 133.322 Pa. */
    public static Conductance ofTorr(double milligramsPerDayTorr) {
        return new Conductance(milligramsPerDayTorr / KILOPASCALS_PER_TORR);
    }

    /** In the unit of papers on eggs. */
    public double milligramsPerDayTorr() {
        return milligramsPerDayKilopascal * KILOPASCALS_PER_TORR;
    }

    /** The same shell elsewhere: thinner air lets vapour through faster. */
    public Conductance at(Conditions conditions, Diffusion diffusion) {
        return new Conductance(milligramsPerDayKilopascal * diffusion.factor(conditions));
    }
}
