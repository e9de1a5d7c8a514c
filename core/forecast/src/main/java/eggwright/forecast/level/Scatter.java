package eggwright.forecast.level;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Erf;

/**
 * The guesses at how a stage moves and scatters on this farm. Each stands for the part of its distribution
 * ({@link Beforehand}) that lies nearest to it and has the chance of that part; the farm's counts weigh them.
 */
final class Scatter {
    private static final double[] SLOPES = {-1.4, 0, 1.4};
    private static final double[] DRIFTS = {0.25, 0.9, 2};
    private static final double[] SETS = {0.2, 0.7, 1.3, 2, 3};
    private static final double[] TRAYS = {0.2, 0.8, 1.8, 3.8};

    private Scatter() {}

    /** @param chance before anything was counted */
    record Guess(double value, double chance) {}

    /** Change of the level through the season, in logits a week. */
    static List<Guess> slopes(Beforehand beforehand) {
        return guesses(SLOPES, Scatter::normal, beforehand.slope(), beforehand.slopeSpread());
    }

    /** Spread of the level's wandering over one week, in logits. */
    static List<Guess> drifts(Beforehand beforehand) {
        return guesses(DRIFTS, Scatter::halfNormal, 0, Beforehand.DRIFT * beforehand.leverage());
    }

    /** Spread of whole sets about the level, in logits: a bad set is bad for all its trays. */
    static List<Guess> sets(Beforehand beforehand) {
        return guesses(SETS, Scatter::halfNormal, 0, Beforehand.SETS * beforehand.leverage());
    }

    /** Likeness of eggs of one tray beyond its set (rho of the beta-binomial), 0 to 1. */
    static List<Guess> trays() {
        return guesses(TRAYS, x -> -Math.expm1(-x), 0, Beforehand.TRAYS);
    }

    private static List<Guess> guesses(double[] points, DoubleUnaryOperator below, double middle, double scale) {
        var guesses = new ArrayList<Guess>();
        double reached = 0;
        for (int i = 0; i < points.length; i++) {
            double to = i + 1 < points.length ? below.applyAsDouble((points[i] + points[i + 1]) / 2) : 1;
            guesses.add(new Guess(middle + scale * points[i], to - reached));
            reached = to;
        }
        return guesses;
    }

    private static double normal(double z) {
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }

    private static double halfNormal(double z) {
        return Erf.erf(z / Math.sqrt(2));
    }
}
