package eggwright.stats.mixed;

import eggwright.stats.search.Objective;
import java.util.Arrays;

/**
 * Half the Laplace approximation of the deviance, without binomial coefficients, by fixed coefficients and then standard
 * deviations, with its exact slope: the modes' own movement enters by one further solution (the adjoint), and the trace
 * terms by the inverse at the places of the factor. A standard deviation may be negative: only its size matters, and the
 * approximation is smooth across 0.
 *
 * <p>Source of the approximation: Breslow and Clayton 1993, J. Am. Stat. Assoc. 88:9; of the slope: Skaug and Fournier
 * 2006, Comput. Stat. Data Anal. 51:699 (both from memory). {@code SlopeTest} holds it against differences.
 */
final class Laplace implements Objective {
    private static final double CLOSE = 1e-18;
    private static final double LARGE = 1e250;

    private final Problem problem;
    private final Cells cells;
    final Modes modes;
    private final double[] adjoint;
    private final double[] pull;
    private final double[] byRow;
    private final double[] spreadByCell;
    private final double[] residualByNode;

    Laplace(Problem problem) {
        this.problem = problem;
        cells = problem.cells();
        modes = new Modes(problem);
        adjoint = new double[cells.nodeCount()];
        residualByNode = new double[cells.nodeCount()];
        pull = new double[problem.rows()];
        byRow = new double[problem.rows()];
        spreadByCell = new double[cells.cellCount()];
    }

    int columns() {
        return problem.design().columns();
    }

    @Override
    public int size() {
        return columns() + cells.width() + (cells.rowGrouping == Cells.NONE ? 0 : 1);
    }

    @Override
    public double at(double[] point, double[] slope) {
        int columns = columns();
        double[] deviations = Arrays.copyOfRange(point, columns, point.length);
        double penalised = modes.find(Arrays.copyOf(point, columns), deviations, CLOSE);
        if (Double.isNaN(penalised)) {
            modes.forget();
            return Double.NaN;
        }
        modes.factor.invert();
        double[] deviation = modes.nodeDeviations(deviations);
        double rowDeviation = modes.rowDeviation(deviations);
        double[] bySize = new double[deviations.length];
        double rowDeterminant = pullOfWeights(deviation, rowDeviation, bySize);
        modes.factor.solve(adjoint);
        movement(deviation, rowDeviation, bySize);
        problem.design().transposed(byRow, slope);
        System.arraycopy(bySize, 0, slope, columns, bySize.length);
        return penalised + (modes.factor.logDeterminant() + rowDeterminant) / 2;
    }

    /** By grouping, how many of its levels' effects the counts leave free rather than the scatter: 0 to all. */
    double[] effectiveLevels(double[] deviations) {
        modes.factor.invert();
        double[] bySize = new double[deviations.length];
        pullOfWeights(modes.nodeDeviations(deviations), modes.rowDeviation(deviations), bySize);
        for (int g = 0; g < bySize.length; g++) {
            bySize[g] *= deviations[g];
        }
        return bySize;
    }

    /** By grouping, the sum of its levels' squared effects, in standard deviations. */
    double[] squaredEffects() {
        double[] sums = new double[size() - columns()];
        for (int k = 0; k < cells.width(); k++) {
            for (int node = cells.firstNode[k]; node < cells.firstNode[k + 1]; node++) {
                sums[cells.groupings[k]] += modes.effects[node] * modes.effects[node];
            }
        }
        for (double v : modes.rowEffects) {
            sums[cells.rowGrouping] += v * v;
        }
        return sums;
    }

    /** Uphill by the fixed coefficients, the effects held. */
    double[] fixedSlope() {
        for (int i = 0; i < byRow.length; i++) {
            byRow[i] = problem.successes()[i] - problem.trials()[i] * modes.mean[i];
        }
        double[] slope = new double[columns()];
        problem.design().transposed(byRow, slope);
        return slope;
    }

    /** Variance of each cell's linear predictor from its levels, as last worked out. */
    double spreadOf(int cell) {
        return spreadByCell[cell];
    }

    /**
     * How the determinant pulls at each row's linear predictor, through its weight; what it adds to the slope by the
     * deviations themselves; and the right side of the adjoint. Returns the logarithm of the rows' own determinant.
     */
    private double pullOfWeights(double[] deviation, double rowDeviation, double[] bySize) {
        boolean ownRows = modes.rowEffects.length > 0;
        int width = cells.width();
        double[] n = problem.trials();
        double logarithm = 0;
        double product = 1;
        double byRowSize = 0;
        Arrays.fill(adjoint, 0);
        for (int cell = 0; cell < spreadByCell.length; cell++) {
            double spread = spread(cell, deviation, bySize);
            spreadByCell[cell] = spread;
            double pulls = 0;
            for (int i = cells.start[cell]; i < cells.start[cell + 1]; i++) {
                double w = modes.weight[i];
                double bend = n[i] > 0 ? w * (1 - 2 * modes.mean[i]) / 2 : 0;
                if (ownRows) {
                    double over = 1 / (1 + rowDeviation * rowDeviation * w);
                    product *= over;
                    if (product < 1 / LARGE) {
                        logarithm -= Math.log(product);
                        product = 1;
                    }
                    double t = bend * over * (rowDeviation * rowDeviation + spread * over);
                    pull[i] = t;
                    pulls += t * over;
                    byRowSize += rowDeviation * w * over * (1 - spread * w * over);
                } else {
                    double t = bend * spread;
                    pull[i] = t;
                    pulls += t;
                }
            }
            for (int k = 0; k < width; k++) {
                adjoint[cells.nodes[cell * width + k]] += deviation[k] * pulls;
            }
        }
        if (ownRows) {
            bySize[cells.rowGrouping] += byRowSize;
        }
        return logarithm - Math.log(product);
    }

    /** Variance of a cell's linear predictor from its levels; adds to the slope by each deviation. */
    private double spread(int cell, double[] deviation, double[] bySize) {
        int width = deviation.length;
        int place = cell * width * (width + 1) / 2;
        double spread = 0;
        for (int k = 0; k < width; k++) {
            for (int l = 0; l <= k; l++) {
                double z = modes.factor.inverseAt(cells.places[place++]);
                if (l == k) {
                    spread += deviation[k] * deviation[k] * z;
                    bySize[cells.groupings[k]] += modes.cellWeight[cell] * deviation[k] * z;
                } else {
                    spread += 2 * deviation[k] * deviation[l] * z;
                    bySize[cells.groupings[k]] += modes.cellWeight[cell] * deviation[l] * z;
                    bySize[cells.groupings[l]] += modes.cellWeight[cell] * deviation[k] * z;
                }
            }
        }
        return spread;
    }

    /** The whole slope by each row's linear predictor, and by the deviations. */
    private void movement(double[] deviation, double rowDeviation, double[] bySize) {
        boolean ownRows = modes.rowEffects.length > 0;
        int width = cells.width();
        double[] y = problem.successes();
        double[] n = problem.trials();
        double byRowSize = 0;
        Arrays.fill(residualByNode, 0);
        for (int cell = 0; cell < spreadByCell.length; cell++) {
            double shift = modes.shift(cell, deviation, adjoint);
            double residuals = 0;
            double slopes = 0;
            for (int i = cells.start[cell]; i < cells.start[cell + 1]; i++) {
                double w = modes.weight[i];
                double residual = y[i] - n[i] * modes.mean[i];
                double moved = shift;
                if (ownRows) {
                    double over = 1 / (1 + rowDeviation * rowDeviation * w);
                    moved = (shift + rowDeviation * rowDeviation * pull[i]) * over;
                    byRowSize += rowDeviation * (pull[i] - w * shift) * over * residual;
                }
                double slope = pull[i] - residual - w * moved;
                if (ownRows) {
                    byRowSize += slope * modes.rowEffects[i];
                }
                byRow[i] = slope;
                slopes += slope;
                residuals += residual;
            }
            for (int k = 0; k < width; k++) {
                int node = cells.nodes[cell * width + k];
                residualByNode[node] += residuals;
                bySize[cells.groupings[k]] += slopes * modes.effects[node];
            }
        }
        for (int k = 0; k < width; k++) {
            for (int node = cells.firstNode[k]; node < cells.firstNode[k + 1]; node++) {
                bySize[cells.groupings[k]] += adjoint[node] * residualByNode[node];
            }
        }
        if (ownRows) {
            bySize[cells.rowGrouping] += byRowSize;
        }
    }
}
