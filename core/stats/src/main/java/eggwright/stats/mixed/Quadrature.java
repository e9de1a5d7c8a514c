package eggwright.stats.mixed;

import eggwright.stats.search.Objective;
import java.util.Arrays;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Half the deviance of a model with one grouping by adaptive Gauss-Hermite quadrature, without binomial coefficients, by
 * fixed coefficients and then the standard deviation. The slope is that of the quadrature itself, the movement of its
 * middle and width included, so that it is exact for any number of nodes; one node is Laplace's approximation.
 *
 * <p>Source: Pinheiro and Bates 1995, J. Comput. Graph. Stat. 4:12 (from memory).
 */
final class Quadrature implements Objective {
    private static final int MOST_STEPS = 100;
    private static final double CLOSE = 1e-22;

    private final Problem problem;
    private final double[] node;
    private final double[] logWeight;
    private final int[] start;
    private final double[] linear;
    private final double[] middle;
    private final double[] byRow;
    private final double[] bySlope;
    private final double[] byWidth;

    // Of the group at hand: sums over its rows at its middle.
    private double residuals;
    private double weights;
    private double bends;

    Quadrature(Problem problem, int nodes) {
        this.problem = problem;
        var rule = new GaussIntegratorFactory().hermite(nodes);
        node = new double[nodes];
        logWeight = new double[nodes];
        for (int k = 0; k < nodes; k++) {
            node[k] = rule.getPoint(k);
            logWeight[k] = Math.log(rule.getWeight(k)) + node[k] * node[k];
        }
        var cells = problem.cells();
        start = cells.width() == 1
                ? cells.start
                : java.util.stream.IntStream.rangeClosed(0, problem.rows()).toArray();
        linear = new double[problem.rows()];
        byRow = new double[problem.rows()];
        middle = new double[start.length - 1];
        bySlope = new double[problem.design().columns()];
        byWidth = new double[problem.design().columns()];
    }

    @Override
    public int size() {
        return problem.design().columns() + 1;
    }

    @Override
    public double at(double[] point, double[] slope) {
        int columns = size() - 1;
        double deviation = point[columns];
        problem.design().times(point, linear);
        Arrays.fill(slope, 0);
        double value = 0;
        for (int group = 0; group + 1 < start.length; group++) {
            value -= addGroup(group, deviation, slope);
        }
        if (!Double.isFinite(value)) {
            Arrays.fill(middle, 0);
            return Double.NaN;
        }
        return value;
    }

    /** One group's log-likelihood; takes its slope off {@code slope}. */
    private double addGroup(int group, double deviation, double[] slope) {
        int columns = size() - 1;
        double mode = mode(group, deviation);
        double bend = 1 + deviation * deviation * weights;
        double width = 1 / Math.sqrt(bend);
        double[] share = new double[node.length];
        double[] pull = new double[node.length];
        double highest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < node.length; k++) {
            share[k] = logWeight[k] - height(group, mode + Math.sqrt(2) * width * node[k], deviation);
            pull[k] = mode + Math.sqrt(2) * width * node[k] - deviation * residuals;
            highest = Math.max(highest, share[k]);
        }
        double sum = 0;
        for (int k = 0; k < node.length; k++) {
            share[k] = Math.exp(share[k] - highest);
            sum += share[k];
        }
        double byMiddle = 0;
        double byScale = 1 / width;
        for (int k = 0; k < node.length; k++) {
            share[k] /= sum;
            byMiddle -= share[k] * pull[k];
            byScale -= share[k] * pull[k] * Math.sqrt(2) * node[k];
        }
        double byDeviation = averageResiduals(group, mode, width, deviation, share);
        look(group, mode, deviation);
        double middleByDeviation = (residuals - deviation * mode * weights) / bend;
        double bendByDeviation =
                2 * deviation * weights + deviation * deviation * bends * (mode + deviation * middleByDeviation);
        // What a change of the curvature does, through the width.
        double byBend = -byScale * width * width * width / 2;
        slope[columns] -= byDeviation + byMiddle * middleByDeviation + byBend * bendByDeviation;
        sumColumns(group, mode, deviation);
        for (int column = 0; column < columns; column++) {
            double middleByColumn = -deviation * bySlope[column] / bend;
            double bendByColumn = deviation * deviation * (byWidth[column] + bends * deviation * middleByColumn);
            slope[column] -= byMiddle * middleByColumn + byBend * bendByColumn;
        }
        for (int i = start[group]; i < start[group + 1]; i++) {
            problem.design().addRow(i, -byRow[i], slope, 0);
        }
        return Math.log(width) + highest + Math.log(sum) - Math.log(Math.PI) / 2;
    }

    /** Each row's residual, averaged over the nodes; returns the same of the slope by the deviation. */
    private double averageResiduals(int group, double mode, double width, double deviation, double[] share) {
        Arrays.fill(byRow, start[group], start[group + 1], 0);
        double sum = 0;
        for (int k = 0; k < node.length; k++) {
            double effect = mode + Math.sqrt(2) * width * node[k];
            for (int i = start[group]; i < start[group + 1]; i++) {
                double residual =
                        problem.successes()[i] - problem.trials()[i] / (1 + Math.exp(-linear[i] - deviation * effect));
                byRow[i] += share[k] * residual;
                sum += share[k] * residual * effect;
            }
        }
        return sum;
    }

    /** The penalised negative log-likelihood of one effect; leaves the sum of residuals. */
    private double height(int group, double effect, double deviation) {
        double height = effect * effect / 2;
        residuals = 0;
        for (int i = start[group]; i < start[group + 1]; i++) {
            double eta = linear[i] + deviation * effect;
            double small = Math.exp(-Math.abs(eta));
            double n = problem.trials()[i];
            double y = problem.successes()[i];
            height += n * (Math.max(eta, 0) + Math.log1p(small)) - y * eta;
            residuals += y - n * (eta >= 0 ? 1 : small) / (1 + small);
        }
        return height;
    }

    /** Sums of residuals, weights and their bends at an effect. */
    private void look(int group, double effect, double deviation) {
        residuals = 0;
        weights = 0;
        bends = 0;
        for (int i = start[group]; i < start[group + 1]; i++) {
            double p = 1 / (1 + Math.exp(-linear[i] - deviation * effect));
            double w = problem.trials()[i] * p * (1 - p);
            residuals += problem.successes()[i] - problem.trials()[i] * p;
            weights += w;
            bends += w * (1 - 2 * p);
        }
    }

    /** Sums by column of weights and of their bends. */
    private void sumColumns(int group, double effect, double deviation) {
        Arrays.fill(bySlope, 0);
        Arrays.fill(byWidth, 0);
        for (int i = start[group]; i < start[group + 1]; i++) {
            double p = 1 / (1 + Math.exp(-linear[i] - deviation * effect));
            double w = problem.trials()[i] * p * (1 - p);
            problem.design().addRow(i, w, bySlope, 0);
            problem.design().addRow(i, w * (1 - 2 * p), byWidth, 0);
        }
    }

    /** The likeliest effect, by Newton's method; leaves the sums there. */
    private double mode(int group, double deviation) {
        double effect = middle[group];
        double height = height(group, effect, deviation);
        for (int i = 0; i < MOST_STEPS; i++) {
            look(group, effect, deviation);
            double pull = deviation * residuals - effect;
            double step = pull / (1 + deviation * deviation * weights);
            if (!(pull * step > CLOSE)) {
                break;
            }
            double there = height(group, effect + step, deviation);
            for (int halving = 0; !(there <= height + 1e-12 * (1 + Math.abs(height))) && halving < 30; halving++) {
                step /= 2;
                there = height(group, effect + step, deviation);
            }
            effect += step;
            height = there;
        }
        look(group, effect, deviation);
        middle[group] = effect;
        return effect;
    }
}
