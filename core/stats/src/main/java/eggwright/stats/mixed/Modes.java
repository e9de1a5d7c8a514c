package eggwright.stats.mixed;

import eggwright.stats.sparse.SparseFactor;

/**
 * The likeliest effects of all levels, given the fixed coefficients and the standard deviations: Newton's method on the
 * penalised log-likelihood, which has one peak (penalised iteratively reweighted least squares). Effects are held in
 * units of their standard deviation, so that one of 0 is nothing special. The grouping that gives each row its own level
 * is eliminated row by row; with it a row's weight w becomes w / (1 + sd^2 w).
 *
 * <p>Source: Bates 2025, Computational methods for mixed models, vignette of R package lme4; Breslow and Clayton 1993, J.
 * Am. Stat. Assoc. 88:9 (both from memory).
 */
final class Modes {
    private static final int MOST_STEPS = 200;
    private static final double SHORTEST = 1e-9;

    private final Problem problem;
    private final Cells cells;
    /** The fixed part of the linear predictor, by place. */
    final double[] linear;
    /** Effects by node, in standard deviations. */
    final double[] effects;
    /** Effects by place of the grouping with a level for each row, in standard deviations. */
    final double[] rowEffects;

    final double[] mean;
    final double[] weight;
    /** Sums over a cell's rows of the weights that are left after its rows' own effects. */
    final double[] cellWeight;

    final SparseFactor factor;
    private final double[] rightSide;
    private final double[] nodeStep;
    private final double[] rowStep;
    /** Squared length of the step still to do for the rows' own effects. */
    private double rowDecrement;

    Modes(Problem problem) {
        this.problem = problem;
        cells = problem.cells();
        linear = new double[problem.rows()];
        mean = new double[problem.rows()];
        weight = new double[problem.rows()];
        effects = new double[cells.nodeCount()];
        rightSide = new double[cells.nodeCount()];
        nodeStep = new double[cells.nodeCount()];
        rowEffects = new double[cells.rowGrouping == Cells.NONE ? 0 : problem.rows()];
        rowStep = new double[rowEffects.length];
        cellWeight = new double[cells.cellCount()];
        factor = new SparseFactor(cells.pattern);
    }

    /** Standard deviation of each row's own effect; 0 where there is none. */
    double rowDeviation(double[] deviations) {
        return cells.rowGrouping == Cells.NONE ? 0 : deviations[cells.rowGrouping];
    }

    /** Standard deviation by grouping that has nodes. */
    double[] nodeDeviations(double[] deviations) {
        double[] own = new double[cells.width()];
        for (int k = 0; k < own.length; k++) {
            own[k] = deviations[cells.groupings[k]];
        }
        return own;
    }

    /**
     * Goes to the peak, from where it stands.
     *
     * @param closeness squared length of the last step, in units of its uncertainty, that counts as none
     * @return the penalised negative log-likelihood there, without binomial coefficients; not a number where it failed
     */
    double find(double[] coefficients, double[] deviations, double closeness) {
        problem.design().times(coefficients, linear);
        double here = look(deviations);
        for (int i = 0; i < MOST_STEPS; i++) {
            if (!Double.isFinite(here) || !factor.factorise()) {
                return Double.NaN;
            }
            double decrement = direction(deviations);
            if (decrement <= closeness) {
                return here;
            }
            step(1);
            double there = look(deviations);
            double share = 1;
            while (!(there <= here + 1e-12 * (1 + Math.abs(here))) && share > SHORTEST) {
                share /= 2;
                step(-share);
                there = look(deviations);
            }
            here = there;
        }
        return factor.factorise() ? here : Double.NaN;
    }

    /** Back to no effects. */
    void forget() {
        java.util.Arrays.fill(effects, 0);
        java.util.Arrays.fill(rowEffects, 0);
    }

    /** Means, weights, the matrix and its right side at the effects as they stand; returns the penalised value. */
    private double look(double[] deviations) {
        double rowDeviation = rowDeviation(deviations);
        boolean ownRows = rowEffects.length > 0;
        double[] deviation = nodeDeviations(deviations);
        double[] y = problem.successes();
        double[] n = problem.trials();
        int width = cells.width();
        factor.becomeIdentity();
        for (int node = 0; node < effects.length; node++) {
            rightSide[node] = -effects[node];
        }
        rowDecrement = 0;
        double value = 0;
        for (int cell = 0; cell < cellWeight.length; cell++) {
            double shift = shift(cell, deviation, effects);
            double weights = 0;
            double residuals = 0;
            for (int i = cells.start[cell]; i < cells.start[cell + 1]; i++) {
                double eta = linear[i] + shift;
                if (ownRows) {
                    eta += rowDeviation * rowEffects[i];
                }
                double small = Math.exp(-Math.abs(eta));
                double over = 1 / (1 + small);
                double p = eta >= 0 ? over : small * over;
                double w = n[i] * small * over * over;
                mean[i] = p;
                weight[i] = w;
                value += n[i] * (Math.max(eta, 0) + Math.log(1 + small)) - y[i] * eta;
                double residual = y[i] - n[i] * p;
                if (ownRows) {
                    double v = rowEffects[i];
                    double pull = rowDeviation * residual - v;
                    double diagonal = 1 + rowDeviation * rowDeviation * w;
                    value += v * v / 2;
                    rowDecrement += pull * pull / diagonal;
                    residual -= rowDeviation * w * pull / diagonal;
                    w /= diagonal;
                }
                weights += w;
                residuals += residual;
            }
            cellWeight[cell] = weights;
            int place = cell * width * (width + 1) / 2;
            for (int k = 0; k < width; k++) {
                rightSide[cells.nodes[cell * width + k]] += deviation[k] * residuals;
                for (int l = 0; l <= k; l++) {
                    factor.add(cells.places[place++], deviation[k] * deviation[l] * weights);
                }
            }
        }
        for (double u : effects) {
            value += u * u / 2;
        }
        return value;
    }

    /** What the levels of a cell add to the linear predictor. */
    double shift(int cell, double[] deviation, double[] of) {
        double shift = 0;
        int width = deviation.length;
        for (int k = 0; k < width; k++) {
            shift += deviation[k] * of[cells.nodes[cell * width + k]];
        }
        return shift;
    }

    /** Works out Newton's step; returns its squared length. */
    private double direction(double[] deviations) {
        System.arraycopy(rightSide, 0, nodeStep, 0, nodeStep.length);
        factor.solve(nodeStep);
        double decrement = rowDecrement;
        for (int node = 0; node < nodeStep.length; node++) {
            decrement += rightSide[node] * nodeStep[node];
        }
        if (rowEffects.length > 0) {
            double rowDeviation = rowDeviation(deviations);
            double[] deviation = nodeDeviations(deviations);
            for (int cell = 0; cell < cellWeight.length; cell++) {
                double shift = shift(cell, deviation, nodeStep);
                for (int i = cells.start[cell]; i < cells.start[cell + 1]; i++) {
                    double residual = problem.successes()[i] - problem.trials()[i] * mean[i];
                    double w = weight[i];
                    rowStep[i] = (rowDeviation * residual - rowEffects[i] - rowDeviation * w * shift)
                            / (1 + rowDeviation * rowDeviation * w);
                }
            }
        }
        return decrement;
    }

    private void step(double share) {
        for (int node = 0; node < effects.length; node++) {
            effects[node] += share * nodeStep[node];
        }
        for (int i = 0; i < rowEffects.length; i++) {
            rowEffects[i] += share * rowStep[i];
        }
    }
}
