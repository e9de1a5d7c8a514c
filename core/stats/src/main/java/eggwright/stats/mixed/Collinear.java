package eggwright.stats.mixed;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;

/** Finds columns that the columns before them say already. */
final class Collinear {
    /** Squared share of a column that the others must leave unsaid: its own spread may be 1e-5 of what it was. */
    private static final double LEAST_LEFT = 1e-10;

    private static final double WORTH_NAMING = 1e-6;
    private static final int MOST_NAMED = 5;

    private Collinear() {}

    /**
     * Refuses a design in which a column can be had from those before it.
     *
     * @throws OutOfRange that names the column and those that it can be had from
     */
    static void refuse(Design design, double[] weights) {
        int columns = design.columns();
        double[][] squares = new double[columns][columns];
        for (int row = 0; row < weights.length; row++) {
            if (weights[row] > 0) {
                design.addSquare(row, 1, squares);
            }
        }
        double[][] factor = new double[columns][columns];
        for (int i = 0; i < columns; i++) {
            double left = squares[i][i];
            for (int j = 0; j < i; j++) {
                double sum = squares[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= factor[i][k] * factor[j][k];
                }
                factor[i][j] = sum / factor[j][j];
                left -= factor[i][j] * factor[i][j];
            }
            if (!(left > LEAST_LEFT * squares[i][i])) {
                throw refused(design.names(), factor, i);
            }
            factor[i][i] = Math.sqrt(left);
        }
    }

    private static OutOfRange refused(List<String> names, double[][] factor, int column) {
        double[] from = new double[column];
        for (int j = column - 1; j >= 0; j--) {
            double sum = factor[column][j];
            for (int k = j + 1; k < column; k++) {
                sum -= factor[k][j] * from[k];
            }
            from[j] = sum / factor[j][j];
        }
        var said = new ArrayList<String>();
        for (int j = 1; j < column; j++) {
            if (Math.abs(from[j]) > WORTH_NAMING) {
                said.add("\"" + names.get(j) + "\"");
            }
        }
        var name = "\"" + names.get(column) + "\"";
        return new OutOfRange(
                said.isEmpty()
                        ? name + " is the same in every row that counts anything, so that its effect cannot be told. "
                                + "Leave it out"
                        : name + " can be had from " + few(said)
                                + ", so that their effects cannot be told apart. Leave one of them out");
    }

    private static String few(List<String> names) {
        return names.size() <= MOST_NAMED
                ? String.join(" and ", names)
                : String.join(", ", names.subList(0, MOST_NAMED)) + " and " + (names.size() - MOST_NAMED) + " more";
    }
}
