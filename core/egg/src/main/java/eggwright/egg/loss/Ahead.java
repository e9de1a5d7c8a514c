package eggwright.egg.loss;

import eggwright.egg.air.MoistAir;
import eggwright.egg.air.Saturation;
import eggwright.egg.shell.Diffusion;
import eggwright.egg.shell.Diffusion.Conditions;
import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.List;

/**
 * The days that are left, with everything fixed but the humidity.
 *
 * @param days at the humidity that is looked for
 * @param air temperature of the air
 * @param egg temperature of the egg
 * @param barometer pressure of the air
 * @param fixed spells after these whose air is settled already, as a hatcher stage; mostly none
 */
public record Ahead(double days, Temperature air, Temperature egg, Pressure barometer, List<Spell> fixed) {
    public Ahead {
        OutOfRange.check("Days left", days, 1e-6, 200, "days");
        fixed = List.copyOf(fixed);
    }

    /** Nothing settled after these days. */
    public static Ahead of(double days, Temperature air, Temperature egg, Pressure barometer) {
        return new Ahead(days, air, egg, barometer, List.of());
    }

    /** This many kPa days for each kPa of difference: f dt. */
    double weightDays(Diffusion diffusion) {
        return diffusion.factor(new Conditions(barometer, egg)) * days;
    }

    double eggKilopascals() {
        return Saturation.over(egg).kilopascals();
    }

    /** Saturation of the air: what a humidity is a share of. */
    double airKilopascals() {
        return Saturation.over(air).kilopascals();
    }

    double fixedExposure(Diffusion diffusion) {
        return Spell.exposureKilopascalDays(fixed, diffusion);
    }

    /** The air at a humidity. */
    public MoistAir at(Humidity humidity) {
        return MoistAir.of(air, humidity, barometer);
    }
}
