package eggwright.forecast.level;

import eggwright.book.name.PenName;
import eggwright.forecast.history.Came;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much better or worse each pen does than the sets it was in, in logits, drawn towards 0: one step of scoring from
 * no difference, the variance of a tray inflated for scatter. How much pens of this farm differ is not known either: four
 * spreads, as likely as each other beforehand (ours, no source), are weighed by the pens' own scores. Empirical Bayes;
 * pens that were set once or twice stay near 0.
 */
public final class PenOffsets {
    private static final double[] SPREADS = {0.05, 0.2, 0.4, 0.7};

    /** Allowance for scatter between trays that is nobody's fault. */
    private static final double TRAY_RHO = 0.03;

    /** The step of scoring is not to be trusted further than this. */
    private static final double FURTHEST = 2;

    private final Map<PenName, Double> offsets;

    private PenOffsets(Map<PenName, Double> offsets) {
        this.offsets = offsets;
    }

    /** The slope of a pen's likelihood at no difference, and how sharply it bends there. */
    private static final class Score {
        double slope;
        double information;

        void add(double more, double moreInformation) {
            slope += more;
            information += moreInformation;
        }
    }

    /** From the counts of many sets at one stage. */
    public static PenOffsets of(Iterable<List<Came>> sets) {
        var scores = new HashMap<PenName, Score>();
        for (var counts : sets) {
            if (counts.size() >= 2) {
                add(scores, counts);
            }
        }
        var weights = new double[SPREADS.length];
        double total = 0;
        for (int i = 0; i < SPREADS.length; i++) {
            double variance = SPREADS[i] * SPREADS[i];
            double log = 0;
            for (var score : scores.values()) {
                // The marginal of a normal step: slope ~ N(0, information + information² variance).
                double spread = score.information * (1 + score.information * variance);
                log -= score.information > 0 ? 0.5 * (Math.log(spread) + score.slope * score.slope / spread) : 0;
            }
            weights[i] = log;
        }
        double greatest = java.util.Arrays.stream(weights).max().orElse(0);
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(weights[i] - greatest);
            total += weights[i];
        }
        var offsets = new HashMap<PenName, Double>();
        for (var pen : scores.entrySet()) {
            double offset = 0;
            for (int i = 0; i < SPREADS.length; i++) {
                double known = pen.getValue().information + 1 / (SPREADS[i] * SPREADS[i]);
                offset += weights[i] / total * pen.getValue().slope / known;
            }
            offsets.put(pen.getKey(), Math.clamp(offset, -FURTHEST, FURTHEST));
        }
        return new PenOffsets(offsets);
    }

    private static void add(Map<PenName, Score> scores, List<Came> counts) {
        double of = counts.stream().mapToInt(Came::of).sum();
        double through = counts.stream().mapToInt(Came::through).sum();
        double p = (through + 0.5) / (of + 1);
        for (var count : counts) {
            double inflated = 1 + (count.of() / (double) count.trays() - 1) * TRAY_RHO;
            for (var pen : count.pens().entrySet()) {
                double share = pen.getValue();
                scores.computeIfAbsent(pen.getKey(), name -> new Score())
                        .add(
                                share * (count.through() - count.of() * p) / inflated,
                                share * share * count.of() * p * (1 - p) / inflated);
            }
        }
    }

    /** Of eggs with these shares of pens, in logits. */
    public double of(Map<PenName, Double> shares) {
        double sum = 0;
        for (var share : shares.entrySet()) {
            sum += share.getValue() * offsets.getOrDefault(share.getKey(), 0.0);
        }
        return sum;
    }
}
