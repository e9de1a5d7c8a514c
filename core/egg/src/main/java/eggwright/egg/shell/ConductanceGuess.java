package eggwright.egg.shell;

import eggwright.units.Mass;
import eggwright.units.OutOfRange;

/**
 * A first guess at the conductance of a shell from the fresh egg's mass, for the days before two weighings exist.
 *
 * <p>Lines through all birds, coefficients from memory. A single species may lie 30 % off (from memory), and within a
 * species mass tells next to nothing (Martin and Arnold 1991, Condor, coturnix: r² = 0.028, read). Range: 1 to 2,000 g.
 */
public final class ConductanceGuess {
    private ConductanceGuess() {}

    /** 0.432 W^0.780 mg/(day torr): Ar and others 1974, Condor 76:153. */
    public static Conductance ofAr1974(Mass fresh) {
        return Conductance.ofTorr(0.432 * Math.pow(checked(fresh), 0.780));
    }

    /** 0.384 W^0.814 mg/(day torr): Ar and Rahn 1978, in Respiratory Function in Birds, Springer. */
    public static Conductance ofArAndRahn1978(Mass fresh) {
        return Conductance.ofTorr(0.384 * Math.pow(checked(fresh), 0.814));
    }

    private static double checked(Mass fresh) {
        return OutOfRange.check("Egg mass", fresh.grams(), 1, 2000, "g");
    }
}
