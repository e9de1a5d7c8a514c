package eggwright.stats.predictive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WholeCountsTest {
    private static final long SEED = 7_1954;
    private static final double ROUNDING = 1e-11;

    @Test
    void counts_sumToOneAndMatchTheClosedForm_forAnyShare() {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 300; i++) {
            int n = random.nextInt(i % 20 == 0 ? 5000 : 200);
            double alpha = Math.exp(random.nextDouble(-6, 9));
            double beta = Math.exp(random.nextDouble(-6, 9));
            var counts = new BetaBinomial(n, alpha, beta).counts();
            String where = "n " + n + " alpha " + alpha + " beta " + beta + ", seed " + SEED;
            double sum = alpha + beta;
            double mean = n * alpha / sum;
            double variance = n * alpha * beta * (sum + n) / (sum * sum * (sum + 1));
            assertEquals(1, counts.cdf(n), ROUNDING, where);
            assertEquals(1, counts.atLeast(0), ROUNDING, where);
            assertEquals(mean, counts.mean(), ROUNDING * (1 + n), where);
            assertEquals(variance, counts.variance(), ROUNDING * (1.0 + n * (double) n), where);
            int k = random.nextInt(n + 1);
            assertEquals(1, counts.cdf(k) + counts.atLeast(k + 1), ROUNDING, where);
            var mirror = new BetaBinomial(n, beta, alpha).counts();
            assertEquals(mirror.pmf(n - k), counts.pmf(k), ROUNDING * counts.pmf(k) + 1e-28, where);
            assertEquals(mirror.pmf(n - k), counts.takenFrom(n).pmf(n - k), ROUNDING, where);
        }
    }

    @Test
    void quantile_isTheSmallestCountThatReachesTheChance() {
        var fair = WholeCounts.ofWeights(1, 1, 1, 1);
        assertEquals(0, fair.quantile(0));
        assertEquals(0, fair.quantile(0.25));
        assertEquals(1, fair.quantile(0.2500001));
        assertEquals(3, fair.quantile(1));
        assertEquals(new CountInterval(0, 3, 0.8), fair.interval(0.8));
    }

    @Test
    void share_isBinomial_whenNothingScatters() {
        var counts = new ScatteredShare(0.5, 0).of(10);
        assertEquals(252 / 1024.0, counts.pmf(5), ROUNDING);
        assertEquals(1 / 1024.0, counts.pmf(10), ROUNDING);
    }

    @Test
    void share_isCertain_atNoneAndAll() {
        assertEquals(1, new ScatteredShare(0, 0.1).of(54).pmf(0));
        assertEquals(1, new ScatteredShare(1, 0.1).of(54).pmf(54));
        assertEquals(1, new ScatteredShare(0.9, 0.1).of(0).pmf(0));
    }

    @Test
    void share_learnsFromItsOwnGroup_asBetaDoes() {
        var after = ScatteredShare.ofBeta(40, 8).after(new Rate(20, 27));
        var kept = ScatteredShare.ofBeta(60, 15);
        assertEquals(kept.mean(), after.mean(), ROUNDING);
        assertEquals(kept.rho(), after.rho(), ROUNDING);
        assertEquals(new ScatteredShare(0.8, 0), new ScatteredShare(0.8, 0).after(new Rate(1, 54)));
    }

    @Test
    void plus_addsMeansAndVariances_forAnyOrder() {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 50; i++) {
            var a = new ScatteredShare(random.nextDouble(), random.nextDouble() * 0.5).of(random.nextInt(300));
            var b = new ScatteredShare(random.nextDouble(), random.nextDouble() * 0.5).of(random.nextInt(300));
            var sum = a.plus(b);
            assertEquals(a.mean() + b.mean(), sum.mean(), 1e-9);
            assertEquals(a.variance() + b.variance(), sum.variance(), 1e-7);
            int k = random.nextInt(sum.most() + 1);
            assertEquals(sum.pmf(k), WholeCounts.sum(List.of(b, a)).pmf(k), ROUNDING);
        }
        assertEquals(1, WholeCounts.sum(List.of()).pmf(0));
    }

    @Test
    void plusCertain_movesTheWholeDistribution() {
        var moved = new BetaBinomial(54, 40, 8).counts().plusCertain(10);
        var sum = new BetaBinomial(54, 40, 8).counts().plus(WholeCounts.certain(10));
        assertEquals(64, moved.most());
        assertEquals(sum.pmf(55), moved.pmf(55));
    }

    @Test
    void thinning_isOneStage_whenEveryEggGoesItsOwnWay() {
        // Binomial of a binomial is binomial with the product of the shares.
        var twice = new ScatteredShare(0.9, 0).of(88).thinnedBy(new ScatteredShare(0.8, 0));
        var once = new ScatteredShare(0.72, 0).of(88);
        for (int k = 0; k <= 88; k++) {
            assertEquals(once.pmf(k), twice.pmf(k), 1e-12 * once.pmf(k) + 1e-29);
        }
    }

    @Test
    void mixture_weighsItsParts() {
        var mixed = WholeCounts.mixture(List.of(WholeCounts.certain(2), WholeCounts.certain(5)), new double[] {3, 1});
        assertEquals(0.75, mixed.pmf(2));
        assertEquals(0.25, mixed.pmf(5));
        assertEquals(2.75, mixed.mean(), ROUNDING);
        assertEquals(5, mixed.most());
    }

    @Test
    void randomisedPit_isUniform_whenTheForecastIsRight() {
        var random = new SplittableRandom(SEED);
        var counts = new BetaBinomial(20, 9, 2).counts();
        int times = 20_000;
        int inside = 0;
        for (int i = 0; i < times; i++) {
            double pit = counts.randomisedPit(counts.quantile(random.nextDouble()), random.nextDouble());
            inside += pit >= 0.1 && pit < 0.9 ? 1 : 0;
        }
        // Four Monte Carlo errors of 0.8 over 20,000 draws.
        assertEquals(0.8, inside / (double) times, 4 * Math.sqrt(0.8 * 0.2 / times), "seed " + SEED);
    }

    @Test
    void counts_areRefused_whenNoChanceIsLeft() {
        assertThrows(OutOfRange.class, () -> WholeCounts.ofWeights(0, 0));
        assertThrows(OutOfRange.class, () -> WholeCounts.ofWeights(1, -1));
        assertThrows(OutOfRange.class, () -> WholeCounts.ofWeights(Double.NaN));
        assertThrows(OutOfRange.class, () -> new BetaBinomial(54, 0, 8));
        assertThrows(OutOfRange.class, () -> new ScatteredShare(0.9, 1));
    }

    @Test
    void counts_holdFarOutOfTheLikely_onlyWhatMatters() {
        var many = new BetaBinomial(5000, 40_000, 8_000).counts();
        assertTrue(many.width() < 2000, "holds " + many.width());
        assertEquals(0, many.pmf(0));
    }
}
