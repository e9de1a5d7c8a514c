package eggwright.egg.body;

import eggwright.units.Mass;
import eggwright.units.OutOfRange;

/**
 * Lines through all birds: what an egg of a fresh mass usually has. They say little of one species, and next to nothing
 * of one egg within it (Martin and Arnold 1991, Condor: r² below 0.03, read). Coefficients from memory; they agree with
 * each other.
 *
 * <p>Range: 1 to 2,000 g, hummingbirds left out.
 */
public final class Allometry {
    private Allometry() {}

    /** 4.835 W^0.662 cm²: Paganelli, Olszowka and Ar 1974, Condor 76:319. */
    public static double surfaceSquareCentimetres(Mass fresh) {
        return line(fresh, 4.835, 0.662);
    }

    /** 1.038 W^0.006 g/cm³: the same. Game birds' shells are thicker and their eggs denser: 1.08 to 1.085. */
    public static double densityGramsPerCubicCentimetre(Mass fresh) {
        return line(fresh, 1.038, 0.006);
    }

    /** 0.0482 W^1.132 g: the same. */
    public static double shellGrams(Mass fresh) {
        return line(fresh, 0.0482, 1.132);
    }

    /** 0.05126 W^0.456 mm: Ar and others 1974, Condor 76:153. A pheasant's was measured as 0.26 mm where this says 0.23. */
    public static double shellMillimetres(Mass fresh) {
        return line(fresh, 0.05126, 0.456);
    }

    /** Days from set to hatch, 12.03 W^0.217: Rahn and Ar 1974, Condor 76:147 (paper read; exponent 0.22 read). */
    public static double incubationDays(Mass fresh) {
        return line(fresh, 12.03, 0.217);
    }

    private static double line(Mass fresh, double factor, double power) {
        double grams = OutOfRange.check("Egg mass", fresh.grams(), 1, 2000, "g");
        return factor * Math.pow(grams, power);
    }
}
