package eggwright.egg.aircell;

import eggwright.egg.body.EggSize;
import eggwright.units.Length;
import java.util.List;

/**
 * What depth tells of one kind of egg, learnt from eggs that were both measured and weighed: a straight line from the
 * flat-cut volume to the true one, by least squares. For a domed membrane that lifts as the cell grows the offset is
 * negative.
 *
 * @param slope true cm³ for each flat-cut cm³
 * @param offsetCubicCentimetres true volume where the flat cut says none
 */
public record DepthCalibration(double slope, double offsetCubicCentimetres) {
    /** One egg: its size, the depth seen at the lamp, and the cell that the scale says. */
    public record Seen(EggSize size, Length depth, AirCell cell) {
        private double flat() {
            return new FlatCut(size).volumeCubicCentimetres(depth);
        }
    }

    /**
     * Learns from eggs of at least two depths.
     *
     * @throws IllegalArgumentException if all eggs show the same depth
     */
    public static DepthCalibration of(List<Seen> eggs) {
        double meanFlat = eggs.stream().mapToDouble(Seen::flat).average().orElse(Double.NaN);
        double meanTrue = eggs.stream()
                .mapToDouble(egg -> egg.cell().volumeCubicCentimetres())
                .average()
                .orElse(Double.NaN);
        double spread = 0;
        double together = 0;
        for (var egg : eggs) {
            double apart = egg.flat() - meanFlat;
            spread += apart * apart;
            together += apart * (egg.cell().volumeCubicCentimetres() - meanTrue);
        }
        if (!(spread > 0)) {
            throw new IllegalArgumentException("Depths of at least two kinds are needed to calibrate");
        }
        double slope = together / spread;
        return new DepthCalibration(slope, meanTrue - slope * meanFlat);
    }

    /** The cell of an egg of the same kind. */
    public AirCell of(EggSize size, Length depth) {
        return new AirCell(
                Math.max(0, offsetCubicCentimetres + slope * new FlatCut(size).volumeCubicCentimetres(depth)));
    }
}
