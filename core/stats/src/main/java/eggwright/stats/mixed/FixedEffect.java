package eggwright.stats.mixed;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.special.Erf;

/**
 * A fixed coefficient.
 *
 * @param term its name
 * @param estimate on the logit
 * @param standardError from the curvature of the whole deviance, deviations included; not a number where that is no hill
 */
public record FixedEffect(String term, double estimate, double standardError) {
    /** Estimate over standard error (Wald). */
    public double z() {
        return estimate / standardError;
    }

    /** Chance, 0 to 1, of an estimate at least as far from 0 by luck, by the normal. */
    public double chance() {
        return Erf.erfc(Math.abs(z()) / Math.sqrt(2));
    }

    /**
     * All of a design, in the units that were asked for.
     *
     * @param point coefficients as used inside, and more after them
     * @param variance of those
     * @param known whether the variance is that of a hill
     */
    static List<FixedEffect> all(Design design, double[] point, double[][] variance, boolean known) {
        int columns = design.columns();
        double[] estimates = design.toOriginal().operate(Arrays.copyOf(point, columns));
        var inside = MatrixUtils.createRealMatrix(columns, columns);
        for (int i = 0; i < columns; i++) {
            inside.setRow(i, Arrays.copyOf(variance[i], columns));
        }
        var asked = design.toOriginal()
                .multiply(inside)
                .multiply(design.toOriginal().transpose());
        return IntStream.range(0, columns)
                .mapToObj(i -> new FixedEffect(
                        design.names().get(i), estimates[i], known ? Math.sqrt(asked.getEntry(i, i)) : Double.NaN))
                .toList();
    }
}
