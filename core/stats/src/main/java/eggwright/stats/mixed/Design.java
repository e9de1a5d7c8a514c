package eggwright.stats.mixed;

import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * The columns of what is fixed. Numbers are centred and scaled inside, so that the search is well conditioned whatever
 * their unit; {@code toOriginal} gives the coefficients as a person asked for them.
 *
 * @param names of the coefficients, the intercept first
 * @param blocks their columns
 * @param toOriginal coefficients of the columns as given = this matrix times those used inside
 * @param empty terms that were asked for and left out, since no row that counts anything is of both kinds, or the other
 *     coefficients say it already
 */
record Design(List<String> names, List<Block> blocks, RealMatrix toOriginal, List<String> empty) {
    Design {
        names = List.copyOf(names);
        blocks = List.copyOf(blocks);
        empty = List.copyOf(empty);
    }

    int columns() {
        return names.size();
    }

    /** Puts the linear predictor into {@code linear}. */
    void times(double[] coefficients, double[] linear) {
        java.util.Arrays.fill(linear, coefficients[0]);
        for (var block : blocks) {
            block.addTimes(coefficients, linear);
        }
    }

    /** Puts the sums over rows of entry times weight into {@code sums}, by column. */
    void transposed(double[] weights, double[] sums) {
        java.util.Arrays.fill(sums, 0, columns(), 0);
        for (double weight : weights) {
            sums[0] += weight;
        }
        for (var block : blocks) {
            block.addTransposed(weights, sums);
        }
    }

    /** Adds a row's entries, times {@code weight}, to {@code sums} from {@code at} on. */
    void addRow(int row, double weight, double[] sums, int at) {
        sums[at] += weight;
        for (var block : blocks) {
            int column = block.column(row);
            if (column >= 0) {
                sums[at + column] += weight * block.value(row);
            }
        }
    }

    /** Adds the products of a row's entries, times {@code weight}, to the lower half of {@code squares}. */
    void addSquare(int row, double weight, double[][] squares) {
        squares[0][0] += weight;
        for (int i = 0; i < blocks.size(); i++) {
            int column = blocks.get(i).column(row);
            if (column < 0) {
                continue;
            }
            double here = weight * blocks.get(i).value(row);
            squares[column][0] += here;
            for (int j = 0; j <= i; j++) {
                int other = blocks.get(j).column(row);
                if (other >= 0) {
                    squares[Math.max(column, other)][Math.min(column, other)] +=
                            here * blocks.get(j).value(row);
                }
            }
        }
    }

    Design ordered(int[] order) {
        return new Design(
                names, blocks.stream().map(block -> block.ordered(order)).toList(), toOriginal, empty);
    }
}
