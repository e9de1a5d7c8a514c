package eggwright.stats.doublesampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.units.OutOfRange;
import org.junit.jupiter.api.Test;

/** Tenenbein 1970 on Hochberg's data and others, worked in R 4.2.2 in closed form and by numerical maximum likelihood. */
class DoubleSampleReferenceTest {
    /** Closed forms on both sides. */
    private static final double AS_R = 1e-9;

    /** R's numerical maximum stops when the likelihood no longer rises; the estimate is then good to 5e-7. */
    private static final double AS_NUMERICAL_MAXIMUM = 1e-6;

    @Test
    void doubleSample_agreesWithTenenbein_inEveryKeptCase() {
        var expected = ReferenceTable.read("doublesampling/double_sampling_expected.csv");
        var cases = ReferenceTable.read("doublesampling/double_sampling.csv");
        assertEquals(10, cases.size());
        for (var c : cases) {
            var sample = new DoubleSample(
                    c.count("x_pos"), c.count("x_neg"), c.count("n11"), c.count("n10"), c.count("n01"), c.count("n00"));
            var corrected = sample.corrected(0.95);
            for (var answer : ReferenceTable.ofCase(expected, c.text("case_id"))) {
                double kept = answer.number("value");
                String where = answer.text("case_id") + " " + answer.text("quantity");
                switch (answer.text("quantity")) {
                    case "n_validation" -> assertEquals(kept, (double) sample.known(), where);
                    case "N_total" -> assertEquals(kept, (double) sample.all(), where);
                    case "ppv" -> assertEquals(kept, sample.trueOfCalledYes(), AS_R, where);
                    case "one_minus_npv" -> assertEquals(kept, sample.trueOfCalledNo(), AS_R, where);
                    case "pi_call_positive", "p_naive_call" -> assertEquals(kept, sample.calledYesShare(), AS_R, where);
                    case "p_hat" -> assertEquals(kept, sample.estimate(), AS_R, where);
                    case "K" -> assertEquals(kept, sample.squaredCorrelation(), AS_R, where);
                    case "variance" -> assertEquals(kept, sample.variance(), AS_R * kept, where);
                    case "variance_delta" -> assertEquals(kept, sample.deltaVariance(), AS_R * kept, where);
                    case "se" -> assertEquals(kept, corrected.standardError(), AS_R * kept, where);
                    case "ci_logit_lower" -> assertEquals(kept, corrected.low(), AS_R, where);
                    case "ci_logit_upper" -> assertEquals(kept, corrected.high(), AS_R, where);
                    case "equivalent_sample_size" -> assertEquals(kept, sample.equivalentEggs(), AS_R * kept, where);
                    case "ml_numeric_p" -> assertEquals(kept, sample.estimate(), AS_NUMERICAL_MAXIMUM, where);
                    // Sensitivity, Wald ends and the validation sample alone are not offered: they answer other
                    // questions.
                    default -> assertTrue(kept > -1, where);
                }
            }
        }
    }

    @Test
    void doubleSample_staysInside_whenNoneOrAllWereTrue() {
        var none = new DoubleSample(0, 500, 0, 0, 0, 40).corrected(0.95);
        assertEquals(0, none.low());
        assertTrue(none.high() > 0 && none.high() < 0.1);
        var all = new DoubleSample(500, 0, 40, 0, 0, 0).corrected(0.95);
        assertEquals(1, all.high());
        assertEquals(1 - none.high(), all.low(), AS_R);
    }

    @Test
    void doubleSample_refusesToJudge_whereTheTruthIsNotKnown() {
        assertThrows(OutOfRange.class, () -> new DoubleSample(10, 90, 0, 0, 0, 0));
        assertThrows(OutOfRange.class, () -> new DoubleSample(10, 90, 0, 5, 0, 50));
        assertThrows(OutOfRange.class, () -> new DoubleSample(-1, 90, 1, 5, 0, 50));
    }
}
