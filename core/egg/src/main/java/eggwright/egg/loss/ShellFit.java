package eggwright.egg.loss;

import eggwright.egg.shell.Conductance;
import eggwright.units.Mass;
import eggwright.units.OutOfRange;
import java.util.List;

/**
 * The conductance that several weighings agree on best: least squares of the loss since the first weighing on the
 * exposure since then, through the first, each weighing with its own error. With two weighings it is G* = (Wa - Wb)/X of
 * equation (4.1).
 *
 * @param conductance at the reference conditions
 * @param standardErrorMilligrams of it, in mg/(day kPa), from the errors of the scale alone, the first weighing's
 *     error being shared by all
 * @param residualGrams what each later weighing shows more lost than the line; a large one is a cracked egg or a slip
 */
public record ShellFit(Conductance conductance, double standardErrorMilligrams, List<Double> residualGrams) {
    private static final double MILLIGRAMS = 1000;

    public ShellFit {
        residualGrams = List.copyOf(residualGrams);
    }

    /**
     * A weighing.
     *
     * @param mass of the same eggs each time
     * @param errorGrams standard error of the scale, above 0
     * @param exposureKilopascalDays since the first weighing, 0 for that one
     */
    public record Weighing(Mass mass, double errorGrams, double exposureKilopascalDays) {
        public Weighing {
            OutOfRange.check("Error of the scale", errorGrams, Double.MIN_NORMAL, 1e6, "g");
            OutOfRange.check("Exposure", exposureKilopascalDays, 0, 1e6, "kPa days");
        }
    }

    /**
     * The fit.
     *
     * @param weighings two or more, the first at exposure 0
     * @throws OutOfRange if there is no second weighing, or nothing was lost
     */
    public static ShellFit of(List<Weighing> weighings) {
        if (weighings.size() < 2) {
            throw new OutOfRange("One weighing tells no loss. Weigh again");
        }
        var first = weighings.getFirst();
        var later = weighings.subList(1, weighings.size());
        double together = 0;
        double spread = 0;
        for (var weighing : later) {
            double weight = 1 / (weighing.errorGrams() * weighing.errorGrams());
            together += weight * weighing.exposureKilopascalDays() * lost(first, weighing);
            spread += weight * weighing.exposureKilopascalDays() * weighing.exposureKilopascalDays();
        }
        double slope = together / spread;
        if (!(slope > 0)) {
            throw new OutOfRange("These eggs have lost nothing yet. Weigh again later");
        }
        return new ShellFit(
                new Conductance(MILLIGRAMS * slope),
                MILLIGRAMS * error(first, later, spread),
                later.stream()
                        .map(weighing -> lost(first, weighing) - slope * weighing.exposureKilopascalDays())
                        .toList());
    }

    /** The slope is a weighted sum of losses; the first weighing's error stands in each of them. */
    private static double error(Weighing first, List<Weighing> later, double spread) {
        double variance = 0;
        double shares = 0;
        for (var weighing : later) {
            double share = weighing.exposureKilopascalDays() / (weighing.errorGrams() * weighing.errorGrams() * spread);
            variance += share * share * weighing.errorGrams() * weighing.errorGrams();
            shares += share;
        }
        return Math.sqrt(variance + shares * shares * first.errorGrams() * first.errorGrams());
    }

    private static double lost(Weighing first, Weighing later) {
        return first.mass().grams() - later.mass().grams();
    }
}
