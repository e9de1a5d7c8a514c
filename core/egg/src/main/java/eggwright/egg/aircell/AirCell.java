package eggwright.egg.aircell;

import eggwright.units.Mass;
import eggwright.units.OutOfRange;

/**
 * How large the air cell is. Water leaves and the shell does not shrink, so the cell grows by the volume of the water
 * lost.
 *
 * <p>Check: hen's eggs grew 3.56 ml in nine days, 0.39 g a day, which is what a 60 g egg loses (Durojaye and others
 * 2018, abstract read).
 *
 * @param volumeCubicCentimetres from 0
 */
public record AirCell(double volumeCubicCentimetres) {
    /** Of water at 37.5 °C, in g/cm³. */
    public static final double WATER_DENSITY = 0.9931;

    /** A hen's egg minutes after laying holds 0.1 to 0.2 cm³ of air (a trade article, read). */
    public static final AirCell OF_A_FRESH_HEN_EGG = new AirCell(0.15);

    /** What an egg starts with when nothing is known of it. */
    public static final AirCell NONE = new AirCell(0);

    public AirCell {
        OutOfRange.check("Air cell", volumeCubicCentimetres, 0, 1000, "cm3");
    }

    /** The cell after this much water was lost. */
    public AirCell after(Mass lost) {
        return new AirCell(volumeCubicCentimetres + lost.grams() / WATER_DENSITY);
    }
}
