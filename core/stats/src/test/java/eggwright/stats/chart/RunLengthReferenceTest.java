package eggwright.stats.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import org.junit.jupiter.api.Test;

/** R's spc 0.6.7, and Lucas and Saccucci 1990, Technometrics 32:1 as printed (from memory). */
class RunLengthReferenceTest {
    private static final double TENTH_OF_A_PERCENT = 1e-3;

    @Test
    void ewma_runsAsLongAsPublished() {
        int checked = 0;
        for (var row : ReferenceTable.read("chart/chart_arl_expected.csv")) {
            if (row.text("chart").startsWith("ewma")) {
                double length = RunLength.ofEwma(row.number("k_or_lambda"), row.number("h_or_L"), row.number("mu"));
                assertEquals(row.number("arl"), length, TENTH_OF_A_PERCENT * length, row.text("case_id"));
                assertEquals(row.number("published"), length, 0.005 * length, row.text("case_id"));
                checked++;
            }
        }
        assertTrue(checked == 9, "cases checked: " + checked);
    }

    /** NIST/SEMATECH e-Handbook 6.3.2: three standard deviations are left by luck once in some 370. */
    @Test
    void shares_runThreeHundredAndSeventy_byLuck() {
        assertEquals(370.4, RunLength.ofShares(3, 0), 0.05);
        assertEquals(RunLength.ofShares(3, 1), RunLength.ofEwma(1, 3, 1), 1e-6);
    }
}
