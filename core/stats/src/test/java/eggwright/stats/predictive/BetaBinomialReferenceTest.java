package eggwright.stats.predictive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import eggwright.stats.ReferenceTable;
import java.util.List;
import org.junit.jupiter.api.Test;

/** R 4.2.2 (lchoose and lbeta, convolution in R), checked there against extraDistr and 40-digit arithmetic. */
class BetaBinomialReferenceTest {
    /** R's lbeta loses digits when alpha and beta are large: its own chances are good to 6e-11 of themselves. */
    private static final double OF_ITSELF = 1e-9;

    @Test
    void betaBinomial_agreesWithR_inEveryKeptCase() {
        var cases = ReferenceTable.read("predictive/beta_binomial.csv");
        assertEquals(14, cases.size());
        for (var c : cases) {
            var counts = new BetaBinomial((int) c.count("n"), c.number("alpha"), c.number("beta")).counts();
            agrees("beta_binomial", c.text("case_id"), counts);
        }
    }

    @Test
    void sum_agreesWithR_forTwoToTwelveLots() {
        var lots = ReferenceTable.read("predictive/beta_binomial_sum.csv");
        for (var id : lots.stream().map(r -> r.text("case_id")).distinct().toList()) {
            var counts = ReferenceTable.ofCase(lots, id).stream()
                    .map(r -> new BetaBinomial((int) r.count("n"), r.number("alpha"), r.number("beta")).counts())
                    .toList();
            agrees("beta_binomial_sum", id, WholeCounts.sum(counts));
        }
    }

    @Test
    void thinning_agreesWithR_forFertileThenHatched() {
        for (var c : ReferenceTable.read("predictive/beta_binomial_two_stage.csv")) {
            var fertile = new BetaBinomial((int) c.count("n"), c.number("alpha1"), c.number("beta1")).counts();
            var hatched = fertile.thinnedBy(ScatteredShare.ofBeta(c.number("alpha2"), c.number("beta2")));
            agrees("beta_binomial_two_stage", c.text("case_id"), hatched);
        }
    }

    private static void agrees(String family, String id, WholeCounts counts) {
        List<ReferenceTable.Row> answers =
                ReferenceTable.ofCase(ReferenceTable.read("predictive/" + family + "_expected.csv"), id);
        assertFalse(answers.isEmpty());
        for (var answer : answers) {
            double kept = answer.number("value");
            String where = id + " " + answer.text("quantity") + " " + answer.text("at");
            switch (answer.text("quantity")) {
                case "mean" -> close(kept, counts.mean(), where);
                case "variance" -> close(kept, counts.variance(), where);
                case "sd" -> close(kept, Math.sqrt(counts.variance()), where);
                case "quantile" -> assertEquals(kept, counts.quantile(answer.number("at")), where);
                case "pmf" -> close(kept, counts.pmf((int) answer.count("at")), where);
                case "cdf" -> close(kept, counts.cdf((int) answer.count("at")), where);
                case "prob_at_least" -> close(kept, counts.atLeast((int) answer.count("at")), where);
                case "mode" ->
                    assertEquals(counts.pmf((int) kept), greatest(counts), OF_ITSELF * greatest(counts), where);
                default -> throw new AssertionError("unread answer " + where);
            }
        }
    }

    private static void close(double kept, double ours, String where) {
        assertEquals(kept, ours, OF_ITSELF * Math.abs(kept), where);
    }

    private static double greatest(WholeCounts counts) {
        double greatest = 0;
        for (int k = 0; k <= counts.most(); k++) {
            greatest = Math.max(greatest, counts.pmf(k));
        }
        return greatest;
    }
}
