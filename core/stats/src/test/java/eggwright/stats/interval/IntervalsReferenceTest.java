package eggwright.stats.interval;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.stats.ReferenceTable;
import eggwright.units.Rate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * R 4.2.2 (prop.test, binom.test, qbeta and closed forms; script in the resources), with the printed ends of Newcombe
 * 1998, Stat. Med. 17:857, Table I among them.
 */
class IntervalsReferenceTest {
    /** The kept values agree with 40-digit arithmetic to 1e-13; R's own qbeta is good to about 1e-12. */
    private static final double AS_R = 1e-10;

    /** Newcombe prints four decimals. */
    private static final double AS_PRINTED = 0.5e-4 + 1e-9;

    private static final List<ReferenceTable.Row> EXPECTED =
            ReferenceTable.read("interval/binomial_intervals_expected.csv");

    @ParameterizedTest
    @EnumSource
    void interval_agreesWithRAndWithPrintedTables_inEveryKeptCase(IntervalMethod method) {
        var cases = EXPECTED.stream()
                .filter(r -> r.text("method").replace('_', '-').equals(method.word()))
                .toList();
        assertEquals(120, cases.size());
        for (var row : cases) {
            var rate = new Rate(row.count("x"), row.count("n"));
            var interval = Intervals.of(rate, method, row.number("conf"));
            String where = row.text("case_id") + " " + rate;
            assertEquals(row.number("estimate"), interval.estimate(), AS_R, where);
            assertEquals(row.number("lower"), interval.low(), AS_R, where);
            assertEquals(row.number("upper"), interval.high(), AS_R, where);
            if (row.has("published_lower")) {
                assertEquals(row.number("published_lower"), interval.low(), AS_PRINTED, where);
                assertEquals(row.number("published_upper"), interval.high(), AS_PRINTED, where);
            }
        }
    }
}
