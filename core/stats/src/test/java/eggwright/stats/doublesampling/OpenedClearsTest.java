package eggwright.stats.doublesampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Intervals;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class OpenedClearsTest {
    private static final long SEED = 31_08;
    private static final double ROUNDING = 1e-12;

    /** A sum over the first beta, and a solver that stops at 1e-12 of the chance. */
    private static final double BY_QUADRATURE = 1e-8;

    @Test
    void infertileShare_isClearsTimesInfertileOfOpened() {
        // 54 eggs, 9 clear, 6 of them opened, 4 infertile: 9/54 x 4/6.
        var share = new OpenedClears(54, 9, 6, 4).infertileShare(0.95);
        assertEquals(1 / 9.0, share.estimate(), ROUNDING);
        double clear = 1 / 6.0;
        double variance = clear * clear * (2 / 9.0) / 6 + (4 / 9.0) * clear * (1 - clear) / 54;
        assertEquals(Math.sqrt(variance), share.standardError(), ROUNDING);
        var apparent = Intervals.wilson95(new Rate(6, 54));
        assertTrue(share.high() - share.low() > apparent.high() - apparent.low(), "opening only some widens");
    }

    @Test
    void infertileShare_isJeffreysOfAllEggs_whenEveryClearWasOpened() {
        for (long[] c : new long[][] {
            {54, 9, 6}, {54, 9, 0}, {54, 9, 9}, {54, 54, 54}, {54, 0, 0}, {1, 1, 1}, {1, 0, 0}, {2000, 160, 120}
        }) {
            var share = new OpenedClears(c[0], c[1], c[1], c[2]).infertileShare(0.95);
            var jeffreys = Intervals.of(new Rate(c[2], c[0]), IntervalMethod.JEFFREYS, 0.95);
            assertEquals(jeffreys.low(), share.low(), BY_QUADRATURE, c[2] + " of " + c[0]);
            assertEquals(jeffreys.high(), share.high(), BY_QUADRATURE, c[2] + " of " + c[0]);
        }
    }

    @Test
    void share_agreesWithTheGeneralCase_whenNoLiveEggIsInfertile() {
        // The same eggs told as a double sample, all lives known to be fertile.
        var special = new OpenedClears(1000, 120, 60, 45).infertileShare(0.95);
        var general = new DoubleSample(60, 0, 45, 0, 15, 880);
        assertEquals(general.estimate(), special.estimate(), ROUNDING);
        assertEquals(general.deltaVariance(), special.standardError() * special.standardError(), ROUNDING);
    }

    @Test
    void share_holdsItsEstimateAndMirrors_forAnyCounts() {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            long eggs = 1 + random.nextLong(i % 10 == 0 ? 20_000 : 120);
            long clears = i % 5 == 0 ? eggs : random.nextLong(eggs + 1);
            long opened = clears == 0 ? 0 : 1 + random.nextLong(clears);
            long infertile = i % 3 == 0 ? opened : i % 3 == 1 ? 0 : random.nextLong(opened + 1);
            var counts = new OpenedClears(eggs, clears, opened, infertile);
            var share = counts.infertileShare(0.95);
            String where = counts + ", seed " + SEED;
            assertTrue(share.low() <= share.estimate() && share.estimate() <= share.high(), where + share);
            assertTrue(share.high() > 0 && share.low() < 1, where);
            assertEquals(1 - share.estimate(), counts.fertileShare(0.95).estimate(), ROUNDING, where);
            assertEquals(1 - share.high(), counts.fertileShare(0.95).low(), ROUNDING, where);
            assertEquals(1, counts.infertileEggs().cdf((int) clears), ROUNDING * 10, where);
            assertEquals(0, counts.infertileEggs().cdf((int) infertile - 1), where);
        }
    }

    @Test
    void share_holdsTheTruthAsOftenAsItSays_overManySets() {
        // 300 eggs, 12 % clear of which 70 % infertile, a third opened: 0.084 of all.
        var random = new SplittableRandom(SEED);
        int sets = 1500;
        int held = 0;
        for (int s = 0; s < sets; s++) {
            int clears = 0;
            int opened = 0;
            int infertile = 0;
            for (int egg = 0; egg < 300; egg++) {
                if (random.nextDouble() < 0.12) {
                    clears++;
                    if (clears % 3 == 1) {
                        opened++;
                        infertile += random.nextDouble() < 0.7 ? 1 : 0;
                    }
                }
            }
            var share = new OpenedClears(300, clears, opened, infertile).infertileShare(0.9);
            held += share.low() <= 0.084 && 0.084 <= share.high() ? 1 : 0;
        }
        // Four Monte Carlo errors, and two points for counts that are whole.
        assertEquals(0.9, held / (double) sets, 4 * Math.sqrt(0.09 / sets) + 0.02, "seed " + SEED);
    }

    @Test
    void infertileEggs_areKnown_whenEveryClearWasOpened() {
        assertEquals(1, new OpenedClears(54, 9, 9, 6).infertileEggs().pmf(6));
    }

    @Test
    void openedClears_areRefused_whenNoneWasOpenedOrCountsDoNotFit() {
        var refusal = assertThrows(OutOfRange.class, () -> new OpenedClears(54, 9, 0, 0));
        assertTrue(refusal.toString().contains("None of 9 clears was opened"));
        assertThrows(OutOfRange.class, () -> new OpenedClears(54, 9, 10, 0));
        assertThrows(OutOfRange.class, () -> new OpenedClears(0, 0, 0, 0));
    }
}
