package eggwright.egg.body;

import eggwright.units.Mass;
import java.util.List;

/**
 * A fresh egg of a size: what it weighed when it was laid, whatever it weighs now.
 *
 * <p>Sources: volume 0.51 L B² (Hoyt 1979, Auk 96:73, seen in a later paper) and mass 0.548 L B² (the same article, from
 * memory), L and B in cm, both means over all birds; surface 4.835 W^0.662 cm² (Paganelli, Olszowka and Ar 1974, Condor
 * 76:319, paper read, coefficients from memory). Where a species' density was measured, the mass is the volume times that.
 * Error: 2 to 4 % for a species, more for pointed eggs. Ten fresh eggs of one's own on a scale are better
 * than any of these: {@link #weighed}.
 *
 * @param massGrams when laid
 * @param volumeCubicCentimetres inside the shell's outer face
 * @param surfaceSquareCentimetres of the shell's outer face
 */
public record FreshEgg(double massGrams, double volumeCubicCentimetres, double surfaceSquareCentimetres) {
    private static final double VOLUME_FACTOR = 0.51;
    private static final double MASS_FACTOR = 0.548;

    /** An egg of a bird of which nothing better is known. */
    public static FreshEgg of(EggSize size) {
        double cube = size.lengthBreadthSquaredCubicCentimetres();
        return of(MASS_FACTOR * cube, VOLUME_FACTOR * cube);
    }

    /** An egg of a bird whose density was measured. */
    public static FreshEgg of(EggSize size, MeasuredDensity density) {
        double volume = VOLUME_FACTOR * size.lengthBreadthSquaredCubicCentimetres();
        return of(volume * density.gramsPerCubicCentimetre(), volume);
    }

    /**
     * An egg of this farm's own birds.
     *
     * @param gramsPerCubicCentimetre as {@link #massFactor} gives it
     */
    public static FreshEgg weighed(EggSize size, double gramsPerCubicCentimetre) {
        double cube = size.lengthBreadthSquaredCubicCentimetres();
        return of(gramsPerCubicCentimetre * cube, VOLUME_FACTOR * cube);
    }

    /**
     * Mass over L B² of fresh eggs that were weighed and measured: the mean of W/(L B²).
     *
     * @throws IllegalArgumentException if there is none
     */
    public static double massFactor(List<Measured> eggs) {
        return eggs.stream()
                .mapToDouble(egg -> egg.mass().grams() / egg.size().lengthBreadthSquaredCubicCentimetres())
                .average()
                .orElseThrow(() -> new IllegalArgumentException("No egg was weighed"));
    }

    /** A fresh egg that was weighed and measured. */
    public record Measured(EggSize size, Mass mass) {}

    public double densityGramsPerCubicCentimetre() {
        return massGrams / volumeCubicCentimetres;
    }

    public Mass mass() {
        return Mass.ofGrams(massGrams);
    }

    private static FreshEgg of(double mass, double volume) {
        return new FreshEgg(mass, volume, Allometry.surfaceSquareCentimetres(Mass.ofGrams(mass)));
    }
}
