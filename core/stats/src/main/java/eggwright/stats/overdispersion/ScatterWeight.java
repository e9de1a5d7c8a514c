package eggwright.stats.overdispersion;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;

/**
 * How much is believed in one amount of scatter between groups.
 *
 * @param rho how alike eggs of one group are beyond the mean, 0 to below 1
 * @param weight above 0; only its proportion to the others counts
 */
public record ScatterWeight(double rho, double weight) {
    private static final double[] USUAL_RHOS = {0, 0.003, 0.006, 0.012, 0.02, 0.035, 0.05, 0.08, 0.12, 0.18, 0.27, 0.4};

    /** Our choice, no source: most trays of one farm scatter little, a few farms much. */
    private static final double USUAL_MEAN_RHO = 0.05;

    public ScatterWeight {
        if (!(rho >= 0 && rho < 1)) {
            throw new OutOfRange("A likeness within groups (rho) of " + rho + " is outside 0 to below 1");
        }
        if (!(weight > 0 && weight < Double.POSITIVE_INFINITY)) {
            throw new OutOfRange("A weight of " + weight + " on rho " + rho + " is not above 0");
        }
    }

    /** Twelve amounts from 0 to 0.4, weighed by an exponential distribution of mean 0.05: a choice of ours, no source. */
    public static List<ScatterWeight> usual() {
        var weights = new ArrayList<ScatterWeight>();
        double above = 1;
        for (int i = 0; i < USUAL_RHOS.length; i++) {
            double below =
                    i + 1 < USUAL_RHOS.length ? Math.exp(-(USUAL_RHOS[i] + USUAL_RHOS[i + 1]) / 2 / USUAL_MEAN_RHO) : 0;
            weights.add(new ScatterWeight(USUAL_RHOS[i], above - below));
            above = below;
        }
        return List.copyOf(weights);
    }
}
