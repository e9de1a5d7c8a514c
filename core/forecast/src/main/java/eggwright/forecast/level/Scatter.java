package eggwright.forecast.level;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Erf;

/**
 * The guesses at how the losses of this farm scatter. Each stands for the part of its distribution
 * ({@link Beforehand}) that lies nearest to it and has the chance of that part; the farm's counts weigh them.
 */
final class Scatter {
    private static final double[] DRIFTS = {0.25, 0.9, 2};
    private static final double[] SETS = {0.2, 0.7, 1.3, 2, 3};
    private static final double[] PENS = {0.25, 0.9, 2};
    private static final double[] TRAYS = {0.2, 0.8, 1.8, 3.8};

    private Scatter() {}

    /** @param chance before anything was counted */
    record Guess(double value, double chance) {}

    /** Spread of a loss' wandering over one week, in logits. */
    static List<Guess> drifts() {
        return guesses(DRIFTS, Scatter::halfNormal, Beforehand.DRIFT);
    }

    /** Spread of a loss of whole sets about its level, in logits: a bad set is bad for all its trays. */
    static List<Guess> sets() {
        return guesses(SETS, Scatter::halfNormal, Beforehand.SETS);
    }

    /** Spread of a loss of single pens about the farm's, in logits. */
    static List<Guess> pens() {
        return guesses(PENS, Scatter::halfNormal, Beforehand.PENS);
    }

    /** Likeness of eggs of one tray beyond its set (rho of the beta-binomial), 0 to 1. */
    static List<Guess> trays() {
        return guesses(TRAYS, x -> -Math.expm1(-x), Beforehand.TRAYS);
    }

    private static List<Guess> guesses(double[] points, DoubleUnaryOperator below, double scale) {
        var guesses = new ArrayList<Guess>();
        double reached = 0;
        for (int i = 0; i < points.length; i++) {
            double to = i + 1 < points.length ? below.applyAsDouble((points[i] + points[i + 1]) / 2) : 1;
            guesses.add(new Guess(scale * points[i], to - reached));
            reached = to;
        }
        return guesses;
    }

    private static double halfNormal(double z) {
        return Erf.erf(z / Math.sqrt(2));
    }
}
