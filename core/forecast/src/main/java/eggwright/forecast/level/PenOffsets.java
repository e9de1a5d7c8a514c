package eggwright.forecast.level;

import eggwright.book.name.PenName;
import eggwright.forecast.history.Came;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much better or worse each pen does than the sets it was in, in logits, drawn towards 0: one step of scoring from
 * no difference, with a normal prior of spread {@value #PRIOR_SPREAD} and the variance of a tray inflated for scatter.
 * Empirical Bayes; pens that were set once or twice stay near 0.
 */
public final class PenOffsets {
    static final double PRIOR_SPREAD = 0.6;

    /** Allowance for scatter between trays that is nobody's fault. */
    private static final double TRAY_RHO = 0.02;

    private final Map<PenName, Double> offsets;

    private PenOffsets(Map<PenName, Double> offsets) {
        this.offsets = offsets;
    }

    /** From the counts of many sets at one stage. */
    public static PenOffsets of(Iterable<List<Came>> sets) {
        var score = new HashMap<PenName, Double>();
        var information = new HashMap<PenName, Double>();
        for (var counts : sets) {
            double of = 0;
            double through = 0;
            for (var count : counts) {
                of += count.of();
                through += count.through();
            }
            if (counts.size() < 2 || of <= 0) {
                continue;
            }
            double p = (through + 0.5) / (of + 1);
            for (var count : counts) {
                double inflated = 1 + (count.of() / (double) count.trays() - 1) * TRAY_RHO;
                for (var pen : count.pens().entrySet()) {
                    double share = pen.getValue();
                    score.merge(pen.getKey(), share * (count.through() - count.of() * p) / inflated, Double::sum);
                    information.merge(pen.getKey(), share * share * count.of() * p * (1 - p) / inflated, Double::sum);
                }
            }
        }
        var offsets = new HashMap<PenName, Double>();
        for (var pen : score.entrySet()) {
            double known = information.getOrDefault(pen.getKey(), 0.0) + 1 / (PRIOR_SPREAD * PRIOR_SPREAD);
            offsets.put(pen.getKey(), Math.max(-2, Math.min(2, pen.getValue() / known)));
        }
        return new PenOffsets(offsets);
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
