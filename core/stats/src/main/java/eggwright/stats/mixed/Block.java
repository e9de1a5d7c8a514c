package eggwright.stats.mixed;

/** Some columns of the design, of which a row has an entry in one at most. */
interface Block {
    /** The column in which a row has its entry; negative where it has none. */
    int column(int row);

    /** That entry. */
    double value(int row);

    /** Adds this block's share of the linear predictor. */
    default void addTimes(double[] coefficients, double[] linear) {
        for (int row = 0; row < linear.length; row++) {
            int column = column(row);
            if (column >= 0) {
                linear[row] += value(row) * coefficients[column];
            }
        }
    }

    /** Adds the sums over rows, by column, of entry times weight. */
    default void addTransposed(double[] weights, double[] sums) {
        for (int row = 0; row < weights.length; row++) {
            int column = column(row);
            if (column >= 0) {
                sums[column] += value(row) * weights[row];
            }
        }
    }

    /** The same with rows in another order. */
    Block ordered(int[] order);

    /** A number in every row. */
    record Numbers(int at, double[] values) implements Block {
        @Override
        public int column(int row) {
            return at;
        }

        @Override
        public double value(int row) {
            return values[row];
        }

        @Override
        public Block ordered(int[] order) {
            return new Numbers(at, Rows.ordered(values, order));
        }
    }

    /** A one in the column of each row's kind. */
    record Kinds(int[] columns) implements Block {
        @Override
        public int column(int row) {
            return columns[row];
        }

        @Override
        public double value(int row) {
            return 1;
        }

        @Override
        public Block ordered(int[] order) {
            return new Kinds(Rows.ordered(columns, order));
        }
    }

    /** A number in the column of each row's kind. */
    record NumbersByKind(int[] columns, double[] values) implements Block {
        @Override
        public int column(int row) {
            return columns[row];
        }

        @Override
        public double value(int row) {
            return values[row];
        }

        @Override
        public Block ordered(int[] order) {
            return new NumbersByKind(Rows.ordered(columns, order), Rows.ordered(values, order));
        }
    }
}
