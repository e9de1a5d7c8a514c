package eggwright.stats.chances;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** R 4.2.2 chisq.test and fisher.test; printed ends of Newcombe 1998, Stat. Med. 17:873, Table II, method 10. */
class RateDifferenceReferenceTest {
    /** Closed forms on both sides; R's exact test sums logarithms, good to about 1e-12. */
    private static final double AS_R = 1e-9;

    /** Newcombe prints four decimals. */
    private static final double AS_PRINTED = 0.5e-4 + 1e-9;

    private static final List<ReferenceTable.Row> EXPECTED =
            ReferenceTable.read("chances/two_proportions_expected.csv");

    @Test
    void difference_agreesWithRAndNewcombe_inEveryKeptCase() {
        var cases = ReferenceTable.read("chances/two_proportions.csv");
        assertEquals(16, cases.size());
        for (var c : cases) {
            String id = c.text("case_id");
            var one = new Rate(c.count("x1"), c.count("n1"));
            var other = new Rate(c.count("x2"), c.count("n2"));
            var ours = RateDifference.of(one, other, 0.95);
            agrees(id, "diff", ours.difference());
            agrees(id, "newcombe_lower", ours.low());
            agrees(id, "newcombe_upper", ours.high());
            agrees(id, "p_fisher_two_sided", ours.exactChance());
            if (ReferenceTable.answer(EXPECTED, id, "chi2").text("value").equals("NaN")) {
                // All or none of both: R divides 0 by 0; we say that luck explains it all.
                assertEquals(0, ours.z(), id);
                assertEquals(1, ours.scoreChance(), id);
            } else {
                agrees(id, "z_pooled", ours.z());
                agrees(id, "p_chi2", ours.scoreChance());
                agrees(id, "chi2", ManyRates.of(List.of(one, other)).chiSquare());
                agrees(id, "p_chi2", ManyRates.of(List.of(one, other)).chance());
            }
        }
    }

    @Test
    void manyRates_agreeWithR_inEveryKeptSet() {
        var groups = ReferenceTable.read("chances/multigroup.csv");
        var expected = ReferenceTable.read("chances/multigroup_expected.csv");
        for (var id : groups.stream().map(r -> r.text("case_id")).distinct().toList()) {
            var ours = ManyRates.of(ReferenceTable.ofCase(groups, id).stream()
                    .map(r -> new Rate(r.count("x"), r.count("n")))
                    .toList());
            assertEquals(ReferenceTable.answer(expected, id, "chi2").number("value"), ours.chiSquare(), AS_R, id);
            assertEquals(ReferenceTable.answer(expected, id, "p_chi2").number("value"), ours.chance(), AS_R, id);
            assertEquals(ReferenceTable.answer(expected, id, "df").number("value"), ours.degreesOfFreedom(), id);
            assertEquals(
                    ReferenceTable.answer(expected, id, "min_expected").number("value"),
                    ours.leastExpected(),
                    AS_R,
                    id);
        }
    }

    @Test
    void difference_turnsItsSign_whenTheRatesChangePlaces() {
        long seed = 905;
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            long n = 1 + random.nextLong(300);
            long m = 1 + random.nextLong(300);
            var one = new Rate(random.nextLong(n + 1), n);
            var other = new Rate(random.nextLong(m + 1), m);
            var there = RateDifference.of(one, other, 0.95);
            var back = RateDifference.of(other, one, 0.95);
            String where = one + " " + other + ", seed " + seed;
            assertEquals(-there.high(), back.low(), 1e-12, where);
            assertEquals(there.scoreChance(), back.scoreChance(), 1e-12, where);
            assertEquals(there.exactChance(), back.exactChance(), 1e-9, where);
            assertTrue(-1 <= there.low() && there.low() <= there.difference() && there.difference() <= there.high());
            assertTrue(there.exactChance() > 0 && there.exactChance() <= 1, where);
        }
    }

    @Test
    void difference_isMoreThanLuck_forAFailingPenButNotForAThinTray() {
        assertTrue(RateDifference.of(new Rate(150, 300), new Rate(2700, 3000), 0.95)
                .isMoreThanLuck());
        assertFalse(
                RateDifference.of(new Rate(4, 5), new Rate(2700, 3000), 0.95).isMoreThanLuck());
    }

    @Test
    void exactChance_isTiny_whenAMillionEggsDiffer() {
        assertTrue(RateDifference.of(new Rate(900_000, 1_000_000), new Rate(800_000, 1_000_000), 0.95)
                        .exactChance()
                < 1e-100);
    }

    @Test
    void comparison_isRefused_whenNothingWasCounted() {
        assertThrows(OutOfRange.class, () -> RateDifference.of(new Rate(0, 0), new Rate(1, 2), 0.95));
        assertThrows(OutOfRange.class, () -> ManyRates.of(List.of(new Rate(1, 2))));
        assertThrows(OutOfRange.class, () -> ManyRates.of(List.of(new Rate(1, 2), new Rate(0, 0))));
    }

    private static void agrees(String id, String quantity, double ours) {
        var answer = ReferenceTable.answer(EXPECTED, id, quantity);
        assertEquals(answer.number("value"), ours, AS_R, id + " " + quantity);
        if (answer.has("published")) {
            assertEquals(answer.number("published"), ours, AS_PRINTED, id + " " + quantity);
        }
    }
}
