package eggwright.stats.overdispersion;

import eggwright.stats.predictive.ScatteredShare;
import java.util.ArrayList;
import java.util.List;

/**
 * The posterior of mean and rho on a grid: the rhos of the prior, and evenly spaced logits of the mean. The range of
 * the logits is narrowed until the posterior fills it, so that few points serve any number of eggs.
 */
final class PosteriorGrid {
    private static final int MEANS = 40;

    /**
     * The likelihood is smooth in the logit, so it is interpolated to a finer row; a prediction of many eggs would
     * otherwise show the single means as lumps.
     */
    private static final int FINER = 4;

    private static final int FINE = (MEANS - 1) * FINER + 1;
    private static final int POINTS = 6;
    private static final double FORGOTTEN = 1e-9;

    /** Beyond this logit a share is within one in a million of 0 or 1; what the prior holds there is put on the end. */
    private static final double LAST_LOGIT = 14;

    /** A cell this much below the best in log posterior does not matter. */
    private static final double MATTERS = 25;

    private static final int MOST_NARROWINGS = 12;

    private final SharePrior prior;
    private final GroupCounts counts;
    private final double priorYes;
    private final double priorNo;

    private double low = -LAST_LOGIT;
    private double high = LAST_LOGIT;
    private final double[][] given;
    private final double[][] height;
    private double best;

    PosteriorGrid(SharePrior prior, GroupCounts counts) {
        this.prior = prior;
        this.counts = counts;
        priorYes = prior.mean() * prior.weightEggs();
        priorNo = (1 - prior.mean()) * prior.weightEggs();
        given = new double[prior.scatter().size()][MEANS];
        height = new double[prior.scatter().size()][MEANS];
    }

    List<LearntCell> cells() {
        measure();
        for (int i = 0; i < MOST_NARROWINGS && narrowed(); i++) {
            measure();
        }
        var cells = new ArrayList<LearntCell>();
        double total = 0;
        for (int f = 0; f < FINE; f++) {
            double at = (double) f / FINER;
            int first = Math.max(0, Math.min(MEANS - POINTS, f / FINER - POINTS / 2 + 1));
            double[] share = lagrange(at - first);
            double before = prior(logit(at)) + endWeight(f, FINE, (high - low) / (FINE - 1));
            for (int r = 0; r < given.length; r++) {
                double between = 0;
                for (int p = 0; p < POINTS; p++) {
                    between += share[p] * given[r][first + p];
                }
                double weight = Math.exp(before + logWeight(r) + between - best);
                if (weight > FORGOTTEN) {
                    double mean = 1 / (1 + Math.exp(-logit(at)));
                    double rho = prior.scatter().get(r).rho();
                    cells.add(new LearntCell(new ScatteredShare(mean, rho), weight));
                    total += weight;
                }
            }
        }
        double sum = total;
        return cells.stream()
                .map(cell -> new LearntCell(cell.share(), cell.weight() / sum))
                .toList();
    }

    /** Weights of the points 0 to POINTS - 1 for a value at x. */
    private static double[] lagrange(double x) {
        double[] weight = new double[POINTS];
        for (int p = 0; p < POINTS; p++) {
            weight[p] = 1;
            for (int q = 0; q < POINTS; q++) {
                weight[p] *= q == p ? 1 : (x - q) / (p - q);
            }
        }
        return weight;
    }

    private double logit(double at) {
        return low + (high - low) * at / (MEANS - 1);
    }

    private double prior(double logit) {
        return -priorYes * Math.log1p(Math.exp(-logit)) - priorNo * Math.log1p(Math.exp(logit));
    }

    private double logWeight(int r) {
        return Math.log(prior.scatter().get(r).weight());
    }

    private void measure() {
        best = Double.NEGATIVE_INFINITY;
        for (int m = 0; m < MEANS; m++) {
            double logit = logit(m);
            double mean = 1 / (1 + Math.exp(-logit));
            double notMean = 1 / (1 + Math.exp(logit));
            double before = prior(logit) + endWeight(m, MEANS, (high - low) / (MEANS - 1));
            for (int r = 0; r < given.length; r++) {
                double rho = prior.scatter().get(r).rho();
                given[r][m] = counts.logLikelihood(mean, notMean, rho / (1 - rho));
                height[r][m] = before + logWeight(r) + given[r][m];
                best = Math.max(best, height[r][m]);
            }
        }
    }

    /** A trapezoid's half at the ends, and what lies beyond the last logit, where the prior falls as e^(-no logit). */
    private double endWeight(int at, int points, double step) {
        if (at == 0) {
            return Math.log(0.5 + (low == -LAST_LOGIT ? 1 / (priorYes * step) : 0));
        }
        if (at == points - 1) {
            return Math.log(0.5 + (high == LAST_LOGIT ? 1 / (priorNo * step) : 0));
        }
        return 0;
    }

    /** Whether the range was wider than it need be; it is then cut to a point beyond what matters. */
    private boolean narrowed() {
        int from = MEANS;
        int to = -1;
        for (var row : height) {
            for (int m = 0; m < MEANS; m++) {
                if (row[m] > best - MATTERS) {
                    from = Math.min(from, m);
                    to = Math.max(to, m);
                }
            }
        }
        from = Math.max(0, from - 1);
        to = Math.min(MEANS - 1, to + 1);
        if (to - from > MEANS * 3 / 4) {
            return false;
        }
        double newLow = logit(from);
        high = to == MEANS - 1 ? high : logit(to);
        low = from == 0 ? low : newLow;
        return true;
    }
}
