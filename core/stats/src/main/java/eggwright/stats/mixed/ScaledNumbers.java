package eggwright.stats.mixed;

import eggwright.units.OutOfRange;

/**
 * Numbers, centred and scaled: value = middle + spread times scaled value.
 *
 * @param middle their mean
 * @param spread their standard deviation
 * @param values scaled, by row
 */
record ScaledNumbers(double middle, double spread, double[] values) {
    private static final double NO_SPREAD = 1e-12;

    /** Those of a term; where all are the same they stay as they are, for the check of collinear columns to name. */
    static ScaledNumbers of(Term.Numbers term) {
        double[] given = term.values();
        double sum = 0;
        for (double value : given) {
            if (!Double.isFinite(value)) {
                throw new OutOfRange("A value of " + term.name() + " is " + value + ", which is not a number");
            }
            sum += value;
        }
        double middle = sum / given.length;
        double squares = 0;
        for (double value : given) {
            squares += (value - middle) * (value - middle);
        }
        double spread = Math.sqrt(squares / given.length);
        if (!(spread > NO_SPREAD * (Math.abs(middle) + spread))) {
            return new ScaledNumbers(0, 1, given);
        }
        double[] values = new double[given.length];
        for (int row = 0; row < values.length; row++) {
            values[row] = (given[row] - middle) / spread;
        }
        return new ScaledNumbers(middle, spread, values);
    }
}
