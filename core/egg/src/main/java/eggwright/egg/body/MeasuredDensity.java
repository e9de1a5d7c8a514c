package eggwright.egg.body;

/**
 * Densities of fresh eggs that somebody weighed in air and in water: Asmundson and Baker 1940, Poultry Sci. 19(4),
 * Table 1 (read). For bobwhite, partridge, chukar, guinea fowl and duck none was found.
 */
public enum MeasuredDensity {
    /** 23 eggs. */
    RING_NECKED_PHEASANT(1.085),
    /** 7 eggs. */
    SILVER_PHEASANT(1.083),
    /** 64 eggs. */
    HEN(1.082),
    /** 64 eggs. */
    TURKEY(1.075);

    private final double gramsPerCubicCentimetre;

    MeasuredDensity(double gramsPerCubicCentimetre) {
        this.gramsPerCubicCentimetre = gramsPerCubicCentimetre;
    }

    public double gramsPerCubicCentimetre() {
        return gramsPerCubicCentimetre;
    }
}
