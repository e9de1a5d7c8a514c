package eggwright.stats.deathcurve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.units.OutOfRange;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** R 4.2.2 optim on the written-out likelihood; SciPy agrees. Break-out sets made up. */
class PhaseRisksReferenceTest {
    /** R's search stops when the likelihood no longer rises. */
    private static final double AS_R = 1e-6;

    /** R's standard errors come from differences of the likelihood. */
    private static final double ERRORS_AS_R = 1e-3;

    private static final List<ReferenceTable.Row> EXPECTED =
            ReferenceTable.read("deathcurve/breakout_phase_expected.csv");
    private static final List<Integer> PHASES = List.of(7, 17, 24);

    @ParameterizedTest
    @ValueSource(strings = {"IC_breakout_fresh", "IC_breakout_stored"})
    void risks_agreeWithR(String id) {
        var fit = PhaseRisks.of(TurnbullReferenceTest.intervals(id), PHASES);
        for (int phase = 0; phase < PHASES.size(); phase++) {
            var expected = ReferenceTable.answer(EXPECTED, id, "daily_probability_phase" + (phase + 1));
            var risk = fit.risks().get(phase);
            assertEquals(expected.number("value"), risk.dailyChance(), AS_R);
            assertEquals(expected.number("se"), risk.standardError(), ERRORS_AS_R * risk.standardError());
            var survival = ReferenceTable.answer(EXPECTED, id, "survival_to_day" + PHASES.get(phase));
            assertEquals(survival.number("value"), fit.survivalTo(PHASES.get(phase)), 10 * AS_R);
        }
        assertEquals(ReferenceTable.answer(EXPECTED, id, "logLik").number("value"), fit.logLikelihood(), AS_R);
    }

    @Test
    void risks_areNone_whenNobodyDiedInAPhase() {
        var fit = PhaseRisks.of(
                List.of(new DeathInterval(0, 7, 5), new DeathInterval(24, Double.POSITIVE_INFINITY, 95)), PHASES);
        assertEquals(1 - Math.pow(0.95, 1 / 7.0), fit.risks().getFirst().dailyChance(), AS_R);
        assertTrue(fit.risks().getLast().dailyChance() < 1e-5);
    }

    @Test
    void risks_refuseDaysOutOfOrder() {
        var some = List.of(new DeathInterval(0, 7, 5));
        assertThrows(OutOfRange.class, () -> PhaseRisks.of(some, List.of(7, 7)));
        assertThrows(OutOfRange.class, () -> PhaseRisks.of(some, List.of(5)));
        assertThrows(OutOfRange.class, () -> PhaseRisks.of(List.of(new DeathInterval(0, 2.5, 5)), PHASES));
    }
}
