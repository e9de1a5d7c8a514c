package eggwright.egg.aircell;

import eggwright.egg.body.EggSize;
import eggwright.units.Length;
import eggwright.units.OutOfRange;

/**
 * The air cell drawn as a flat cut through a spheroid: for a picture only.
 *
 * <p>The inner membrane is domed, not flat, so that this over-reads the volume of a real cell of the same depth: 3.6-fold on
 * day 3 and 1.6-fold on day 12 of hen's eggs (Durojaye and others 2018, abstract read). What an egg has lost comes from
 * the scale, or from depth calibrated on eggs of the same kind ({@link DepthCalibration}).
 *
 * @param size of the egg
 */
public record FlatCut(EggSize size) {
    private static final double CUBIC_MM_IN_CUBIC_CM = 1000;
    private static final double CLOSE_MM = 1e-10;

    /** V = pi b² h² (3a - h)/(3a²), a and b half the length and breadth, h the depth from the blunt pole. */
    public double volumeCubicCentimetres(Length depth) {
        return volume(inside(depth)) / CUBIC_MM_IN_CUBIC_CM;
    }

    /** Diameter of the ring that the candling lamp shows: 2b sqrt(1 - (1 - h/a)²). */
    public Length ring(Length depth) {
        double fromMiddle = 1 - inside(depth) / halfLength();
        return Length.ofMillimetres(2 * halfBreadth() * Math.sqrt(Math.max(0, 1 - fromMiddle * fromMiddle)));
    }

    /**
     * The depth of a cell of this volume, if it were flat. The volume rises with the depth from pole to pole, so that
     * halving the span finds the only root.
     *
     * @throws OutOfRange if the cell is larger than the egg
     */
    public Length depth(AirCell cell) {
        double wanted = cell.volumeCubicCentimetres() * CUBIC_MM_IN_CUBIC_CM;
        double high = 2 * halfLength();
        OutOfRange.check("Air cell", wanted, 0, volume(high), "mm3");
        double low = 0;
        while (high - low > CLOSE_MM) {
            double middle = (low + high) / 2;
            if (volume(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Length.ofMillimetres((low + high) / 2);
    }

    private double volume(double depth) {
        double a = halfLength();
        double b = halfBreadth();
        return Math.PI * b * b * depth * depth * (3 * a - depth) / (3 * a * a);
    }

    private double inside(Length depth) {
        return OutOfRange.check("Depth of the air cell", depth.millimetres(), 0, 2 * halfLength(), "mm");
    }

    private double halfLength() {
        return size.length().millimetres() / 2;
    }

    private double halfBreadth() {
        return size.breadth().millimetres() / 2;
    }
}
