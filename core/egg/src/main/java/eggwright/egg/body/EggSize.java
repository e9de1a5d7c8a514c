package eggwright.egg.body;

import eggwright.units.Length;
import eggwright.units.OutOfRange;

/**
 * What callipers read of one egg.
 *
 * <p>Range: length 15 to 200 mm, and breadth from a third of it up to all of it.
 *
 * @param length from the blunt to the pointed end
 * @param breadth the greatest one
 */
public record EggSize(Length length, Length breadth) {
    private static final double SHORTEST_MM = 15;
    private static final double LONGEST_MM = 200;
    private static final double SLIMMEST = 1 / 3.0;

    /**
     * @throws OutOfRange if no egg has this size
     */
    public EggSize {
        double longMillimetres = OutOfRange.check("Egg length", length.millimetres(), SHORTEST_MM, LONGEST_MM, "mm");
        if (!(breadth.millimetres() <= longMillimetres)) {
            throw new OutOfRange("The breadth, " + breadth + ", is more than the length, " + length
                    + ". Look whether the two are swapped");
        }
        OutOfRange.check("Egg breadth", breadth.millimetres(), longMillimetres * SLIMMEST, longMillimetres, "mm");
    }

    public static EggSize ofMillimetres(double length, double breadth) {
        return new EggSize(Length.ofMillimetres(length), Length.ofMillimetres(breadth));
    }

    /** Length times breadth squared, in cm3: what mass and volume go with. */
    public double lengthBreadthSquaredCubicCentimetres() {
        return length.centimetres() * breadth.centimetres() * breadth.centimetres();
    }
}
