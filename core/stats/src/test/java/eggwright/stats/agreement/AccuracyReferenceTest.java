package eggwright.stats.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.stats.interval.Intervals;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** R 4.2.2, closed forms; and a worked example of the literature. */
class AccuracyReferenceTest {
    /** Closed forms on both sides. */
    private static final double AS_R = 1e-10;

    private static final List<ReferenceTable.Row> EXPECTED = ReferenceTable.read("agreement/sdt_expected.csv");

    @Test
    void accuracy_agreesWithR_inEveryKeptCase() {
        var cases = ReferenceTable.read("agreement/sdt.csv");
        assertEquals(12, cases.size());
        for (var c : cases) {
            var id = c.text("case_id");
            var ours = new Accuracy(
                    c.count("hits"), c.count("false_alarms"), c.count("misses"), c.count("correct_rejections"));
            agrees(id, "sensitivity", ours.sensitivity().share());
            agrees(id, "sensitivity_wilson_lower", low(ours.sensitivity()));
            agrees(id, "sensitivity_wilson_upper", high(ours.sensitivity()));
            agrees(id, "specificity", ours.specificity().share());
            agrees(id, "specificity_wilson_lower", low(ours.specificity()));
            agrees(id, "specificity_wilson_upper", high(ours.specificity()));
            agrees(id, "ppv", ours.positivePredictiveValue().share());
            agrees(id, "npv", ours.negativePredictiveValue().share());
        }
    }

    /**
     * 670 of 744 ill found, 640 of 842 well cleared: Scott, Greenberg and Poole 2008, Intern. Med. J. 38:120 (from memory), as the help of
     * the R package epiR prints it: sensitivity 0.90 (0.88 to 0.92), specificity 0.76 (0.73 to 0.79). Its limits are the
     * exact ones; to two digits Wilson's are the same.
     */
    @Test
    void accuracy_agreesWithAPrintedExample() {
        var test = new Accuracy(670, 202, 74, 640);
        double halfADigit = 0.5e-2;
        assertEquals(0.90, test.sensitivity().share(), halfADigit);
        assertEquals(0.88, low(test.sensitivity()), halfADigit);
        assertEquals(0.92, high(test.sensitivity()), halfADigit);
        assertEquals(0.76, test.specificity().share(), halfADigit);
        assertEquals(0.73, low(test.specificity()), halfADigit);
        assertEquals(0.79, high(test.specificity()), halfADigit);
        assertEquals(new Rate(670, 872), test.positivePredictiveValue());
        assertEquals(new Rate(640, 714), test.negativePredictiveValue());
    }

    @Test
    void accuracy_saysNothing_whereThereIsNothingToTakeAShareOf() {
        var onlyLive = new Accuracy(0, 0, 0, 54);
        assertTrue(onlyLive.sensitivity().isEmpty());
        assertTrue(onlyLive.positivePredictiveValue().isEmpty());
        assertEquals(new Rate(54, 54), onlyLive.specificity());
        assertThrows(OutOfRange.class, () -> new Accuracy(3, -1, 0, 0));
    }

    private static double low(Rate rate) {
        return Intervals.wilson95(rate).low();
    }

    private static double high(Rate rate) {
        return Intervals.wilson95(rate).high();
    }

    private static void agrees(String id, String quantity, double ours) {
        assertEquals(ReferenceTable.answer(EXPECTED, id, quantity).number("value"), ours, AS_R, id + " " + quantity);
    }
}
