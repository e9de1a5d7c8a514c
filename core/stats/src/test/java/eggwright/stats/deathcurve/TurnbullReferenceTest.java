package eggwright.stats.deathcurve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * R 4.2.2, accepted there only where the gradient is at most 1 + 1e-9 everywhere. IC_bcos: Finkelstein and Wolfe 1985, whose
 * 19 chances Fay and Shaw 2010, J. Stat. Softw. 36(2), print; hand cases by hand; break-out sets made up.
 */
class TurnbullReferenceTest {
    /** The reference asks for 1e-5; both are at the same top, which is flatter than their last digits. */
    private static final double AS_R = 1e-7;

    private static final List<ReferenceTable.Row> COUNTS = ReferenceTable.read("deathcurve/interval_censored.csv");
    private static final List<ReferenceTable.Row> EXPECTED =
            ReferenceTable.read("deathcurve/interval_censored_expected.csv");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "IC_bcos_Rad",
                "IC_bcos_RadChem",
                "IC_hand1",
                "IC_hand2",
                "IC_hand3",
                "IC_breakout_fresh",
                "IC_breakout_stored"
            })
    void curve_agreesWithR(String id) {
        var curve = Turnbull.of(intervals(id));
        var expected = ReferenceTable.ofCase(EXPECTED, id);
        assertEquals(expected.size(), curve.steps().size(), curve::toString);
        for (int i = 0; i < expected.size(); i++) {
            var row = expected.get(i);
            var step = curve.steps().get(i);
            assertEquals(row.number("lower"), step.fromDay());
            assertEquals(row.has("upper") ? row.number("upper") : Double.POSITIVE_INFINITY, step.toDay());
            assertEquals(row.number("probability"), step.chance(), AS_R);
            if (row.has("published")) {
                assertEquals(row.number("published"), step.chance(), 0.00005);
            }
        }
        assertEquals(expected.getFirst().number("logLik"), curve.logLikelihood(), AS_R);
    }

    @Test
    void curve_saysThatItDidNotReachTheTop_whenItsRoundsRunOut() {
        var intervals = intervals("IC_bcos_Rad");
        assertFalse(Turnbull.curve(intervals, 1).converged());
        assertTrue(Turnbull.of(intervals).converged());
    }

    @Test
    void curve_refusesInWords_whatWouldTakeForEver() {
        var many = new ArrayList<DeathInterval>();
        for (int from = 0; from < 200; from++) {
            for (int to = from + 1; to < 400; to++) {
                many.add(new DeathInterval(from, to, 1));
            }
        }
        var refused = assertThrows(OutOfRange.class, () -> Turnbull.of(many));
        assertEquals(
                "59900 different classes over 200 ranges of days are too many to work out. Sort the deaths into fewer "
                        + "classes, as whole days",
                refused.getMessage());
    }

    @Test
    void curve_isThatOfTheDays_whenEachIsKnown() {
        var curve = Turnbull.of(List.of(
                new DeathInterval(0, 1, 3),
                new DeathInterval(1, 2, 1),
                new DeathInterval(2, Double.POSITIVE_INFINITY, 6)));
        assertEquals(0.3, curve.diedBy(1), AS_R);
        assertEquals(0.4, curve.diedBy(2), AS_R);
        assertEquals(0.4, curve.diedBy(24), AS_R);
    }

    @Test
    void intervals_refuseWhatIsNoRange() {
        assertThrows(OutOfRange.class, () -> new DeathInterval(7, 4, 1));
        assertThrows(OutOfRange.class, () -> new DeathInterval(0, 0, 1));
        assertThrows(OutOfRange.class, () -> new DeathInterval(Double.NaN, 4, 1));
        assertThrows(OutOfRange.class, () -> new DeathInterval(0, 4, -1));
        assertThrows(OutOfRange.class, () -> Turnbull.of(List.of(new DeathInterval(0, 4, 0))));
    }

    static List<DeathInterval> intervals(String id) {
        return ReferenceTable.ofCase(COUNTS, id).stream()
                .map(row -> new DeathInterval(
                        row.number("left"),
                        row.has("right") ? row.number("right") : Double.POSITIVE_INFINITY,
                        row.count("count")))
                .toList();
    }
}
