package eggwright.stats.agreement;

import eggwright.stats.interval.Level;

/**
 * How far two looks agree beyond luck: 0 is what luck alone would give, 1 is agreement on every egg, below 0 is less
 * than luck.
 *
 * <p>With p the table's shares, r its row and c its column totals: observed po = sum p_ii, expected pe = sum r_i c_i,
 * kappa = (po - pe) / (1 - pe). Source: Cohen 1960, Educ. Psychol. Meas. 20:37. Standard error: Fleiss, Cohen and
 * Everitt 1969, Psychol. Bull. 72:323, for a kappa that is not 0:
 *
 * <p>var = [ sum p_ij (w_ij - (c_i + r_j)(1 - kappa))^2 - (kappa - pe (1 - kappa))^2 ] / (n (1 - pe)^2), w_ij = 1 where
 * i = j, else 0. It is the variance of the term in the round brackets over the eggs, and is summed as such, since the
 * difference above loses all its figures where kappa is near 0 or 1. Limits: kappa and z standard errors to either side
 * (Wald), not cut at 1.
 *
 * <p>Error: within 1e-10 of R 4.2.2 in 10 tables, as {@code KappaReferenceTest} checks. Range: that of {@link
 * AgreementTable}. The error is a large-sample one, and takes eggs as alike and independent; it is 0, and the limits say
 * nothing, where all eggs agreed or one look used one word only. Where nearly all eggs are called one thing kappa is low
 * though nearly all agree: read it beside {@link SpecificAgreement}.
 */
public sealed interface Kappa {
    /** The share, 0 to 1, that both looks called the same. */
    double observed();

    /** The share, 0 to 1, that would agree by luck alone. */
    double expected();

    /**
     * A kappa that can be worked out.
     *
     * @param kappa at most 1
     * @param standardError at least 0
     * @param low lower limit, possibly below -1
     * @param high upper limit, possibly above 1
     * @param level share of such intervals that should hold the truth
     */
    record Estimated(
            double kappa, double standardError, double low, double high, double level, double observed, double expected)
            implements Kappa {}

    /** Both looks called all eggs the same one thing: 0 / 0. They agreed, and nothing tells whether they could differ. */
    record Undefined() implements Kappa {
        @Override
        public double observed() {
            return 1;
        }

        @Override
        public double expected() {
            return 1;
        }
    }

    /**
     * The kappa of a table.
     *
     * @param level of the limits, above 0 and below 1
     * @throws eggwright.units.OutOfRange if the level is not inside 0 to 1
     */
    static Kappa of(AgreementTable table, double level) {
        double z = Level.normalEnd(level);
        var margins = table.margins();
        double kappa = margins.kappa(table.agreed());
        if (Double.isNaN(kappa)) {
            return new Undefined();
        }
        double error = standardError(table, margins, kappa);
        return new Estimated(
                kappa,
                error,
                kappa - z * error,
                kappa + z * error,
                level,
                (double) table.agreed() / table.eggs(),
                margins.expected());
    }

    private static double standardError(AgreementTable table, AgreementMargins margins, double kappa) {
        double n = table.eggs();
        int wide = table.categories().size();
        double[][] term = new double[wide][wide];
        double sum = 0;
        for (int i = 0; i < wide; i++) {
            for (int j = 0; j < wide; j++) {
                double word = i == j ? 1 : 0;
                double totals = (margins.second().get(i) + margins.first().get(j)) / n;
                term[i][j] = word - totals * (1 - kappa);
                sum += table.count(i, j) * term[i][j];
            }
        }
        double mean = sum / n;
        double squares = 0;
        for (int i = 0; i < wide; i++) {
            for (int j = 0; j < wide; j++) {
                squares += table.count(i, j) * (term[i][j] - mean) * (term[i][j] - mean);
            }
        }
        return Math.sqrt(squares) / (n * (1 - margins.expected()));
    }
}
