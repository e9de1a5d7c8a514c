package eggwright.stats.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.stats.ReferenceTable;
import eggwright.units.Rate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * R 4.2.2, base. PC01 to PC03: orange-juice cans, Montgomery 1991; PC04 his purchase orders; PC05 Wetherill and Brown 1991;
 * PC06 Mohammed and others 2013; PC07 made up; PC08 a known target. See SOURCES.md.
 */
class ChartReferenceTest {
    private static final double AS_R = 1e-10;
    private static final List<ReferenceTable.Row> COUNTS = ReferenceTable.read("chart/pchart.csv");
    private static final List<ReferenceTable.Row> CASES = ReferenceTable.read("chart/pchart_cases.csv");

    @ParameterizedTest
    @ValueSource(strings = {"PC01", "PC02", "PC03", "PC04", "PC05", "PC06", "PC07", "PC08"})
    void charts_agreeWithR(String id) {
        var baseline = baseline(id);
        var plain = ControlChart.plain(counts(id), baseline, 3).points();
        var overdispersed = ControlChart.overdispersed(counts(id), baseline, 3).points();
        var expected = ReferenceTable.ofCase(ReferenceTable.read("chart/pchart_expected.csv"), id);
        for (int i = 0; i < expected.size(); i++) {
            var row = expected.get(i);
            assertPoint(row, "p", "lcl", "ucl", "beyond_p", plain.get(i));
            assertPoint(row, "p", "laney_lcl", "laney_ucl", "beyond_laney", overdispersed.get(i));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"PC01", "PC02", "PC03", "PC04", "PC05", "PC06", "PC07", "PC08"})
    void ewma_agreesWithR(String id) {
        for (double weight : new double[] {0.2, 0.1}) {
            var points = ControlChart.ewma(counts(id), baseline(id), weight, weight == 0.2 ? 3 : 2.7, 1)
                    .points();
            var expected = ReferenceTable.ofCase(ReferenceTable.read("chart/ewma_expected.csv"), id).stream()
                    .filter(row -> row.number("lambda") == weight)
                    .toList();
            for (int i = 0; i < expected.size(); i++) {
                assertPoint(
                        expected.get(i), "ewma", "lcl_recursive", "ucl_recursive", "signal_recursive", points.get(i));
            }
        }
    }

    /** NIST/SEMATECH e-Handbook 6.3.3.2 prints 0.2313, 0.0524 and 0.4102 for thirty samples of fifty. */
    @Test
    void chart_hasTheHandbooksLimits() {
        var chart = ControlChart.plain(counts("PC01"), baseline("PC01"), 3);
        assertEquals(0.2313, chart.center(), 0.00005);
        assertEquals(0.0524, chart.points().getFirst().low(), 0.00005);
        assertEquals(0.4102, chart.points().getFirst().high(), 0.00005);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PC01", "PC04", "PC06", "PC07"})
    void scatter_agreesWithR(String id) {
        var summary = ReferenceTable.read("chart/pchart_summary_expected.csv");
        assertEquals(
                ReferenceTable.answer(summary, id, "sigma_z_1.128").number("value"),
                baseline(id).scatter(),
                AS_R * baseline(id).scatter());
    }

    private static void assertPoint(
            ReferenceTable.Row row, String value, String low, String high, String outside, ControlChart.Point point) {
        assertEquals(row.count("subgroup"), point.index());
        assertEquals(row.number(value), point.value(), AS_R);
        assertEquals(Math.max(0, row.number(low)), point.low(), AS_R);
        assertEquals(Math.min(1, row.number(high)), point.high(), AS_R);
        assertEquals(row.count(outside) == 1, point.outside());
    }

    private static List<Rate> counts(String id) {
        return ReferenceTable.ofCase(COUNTS, id).stream()
                .map(row -> new Rate(row.count("x"), row.count("n")))
                .toList();
    }

    private static Baseline baseline(String id) {
        var calibrating = ReferenceTable.ofCase(COUNTS, id).stream()
                .filter(row -> row.count("calibrate") == 1)
                .map(row -> new Rate(row.count("x"), row.count("n")))
                .toList();
        var target = ReferenceTable.ofCase(CASES, id).getFirst();
        return target.has("p0") ? Baseline.around(target.number("p0"), calibrating) : Baseline.of(calibrating);
    }
}
