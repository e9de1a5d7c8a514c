package eggwright.stats.mixed;

import eggwright.stats.search.QuasiNewton;

/**
 * What the counts tell of the fixed coefficients while the deviations are known: the weighted squares of the columns, less
 * what the groups' effects could explain as well.
 */
final class FixedInformation {
    private FixedInformation() {}

    /** The matrix at the modes as they stand, factorised. */
    static double[][] at(Problem problem, Modes modes, double[] deviations) {
        var cells = problem.cells();
        var design = problem.design();
        int columns = design.columns();
        double[] deviation = modes.nodeDeviations(deviations);
        double rowDeviation = modes.rowDeviation(deviations);
        double[][] squares = new double[columns][columns];
        double[][] byNode = new double[columns][cells.nodeCount()];
        double[] sums = new double[columns];
        for (int cell = 0; cell < cells.cellCount(); cell++) {
            java.util.Arrays.fill(sums, 0);
            for (int i = cells.start[cell]; i < cells.start[cell + 1]; i++) {
                double w = modes.weight[i] / (1 + rowDeviation * rowDeviation * modes.weight[i]);
                design.addRow(i, w, sums, 0);
                design.addSquare(i, w, squares);
            }
            for (int k = 0; k < deviation.length; k++) {
                int node = cells.nodes[cell * deviation.length + k];
                for (int column = 0; column < columns; column++) {
                    byNode[column][node] += deviation[k] * sums[column];
                }
            }
        }
        for (int column = 0; column < columns; column++) {
            double[] explained = byNode[column].clone();
            modes.factor.solve(explained);
            for (int other = 0; other <= column; other++) {
                squares[column][other] -= QuasiNewton.dot(explained, byNode[other]);
                squares[other][column] = squares[column][other];
            }
        }
        return squares;
    }
}
