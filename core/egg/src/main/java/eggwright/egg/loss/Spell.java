package eggwright.egg.loss;

import eggwright.egg.air.MoistAir;
import eggwright.egg.air.Saturation;
import eggwright.egg.shell.Diffusion;
import eggwright.egg.shell.Diffusion.Conditions;
import eggwright.units.OutOfRange;
import eggwright.units.Temperature;
import java.util.List;

/**
 * A stretch of time in which the air round an egg stayed as it was: in store, in the machine, in a fault.
 *
 * @param days above 0 and up to 200
 * @param air round the egg
 * @param egg temperature of the egg; where nobody knows better, that of the air
 */
public record Spell(double days, MoistAir air, Temperature egg) {
    private static final double SHORTEST_DAYS = 1e-6;
    private static final double LONGEST_DAYS = 200;

    /**
     * @throws OutOfRange if the days are outside the range, or the egg would take up water: then it is wet, and none of
     *     this holds
     */
    public Spell {
        OutOfRange.check("Days", days, SHORTEST_DAYS, LONGEST_DAYS, "days");
        if (!(Saturation.over(egg).kilopascals() > air.vapour().kilopascals())) {
            throw new OutOfRange("The air is as wet as an egg at " + egg
                    + " is inside, or wetter, so that it takes no water from it. Look at the humidity again");
        }
    }

    /** A spell in which the egg was as warm as the air. */
    public static Spell of(double days, MoistAir air) {
        return new Spell(days, air, air.temperature());
    }

    /** Vapour pressure inside the egg, which is saturated, less that of the air, in kPa: de of equation (3.1). */
    public double differenceKilopascals() {
        return Saturation.over(egg).kilopascals() - air.vapour().kilopascals();
    }

    /** What the shell multiplies: f de dt of equation (4.1), in kPa days at the reference conditions. */
    public double exposureKilopascalDays(Diffusion diffusion) {
        return diffusion.factor(conditions()) * differenceKilopascals() * days;
    }

    /** The sum over a history: X of equation (4.1). */
    public static double exposureKilopascalDays(List<Spell> history, Diffusion diffusion) {
        return history.stream()
                .mapToDouble(spell -> spell.exposureKilopascalDays(diffusion))
                .sum();
    }

    Conditions conditions() {
        return new Conditions(air.barometer(), egg);
    }
}
