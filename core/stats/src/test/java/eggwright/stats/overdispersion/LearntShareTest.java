package eggwright.stats.overdispersion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.predictive.BetaBinomial;
import eggwright.stats.predictive.ScatteredShare;
import eggwright.stats.predictive.WholeCounts;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LearntShareTest {
    private static final long SEED = 20270405;

    /** Forty means on a range cut at e^-25 of the peak; the trapezoid sum does the rest. */
    private static final double BY_GRID = 1e-6;

    private static final List<ScatterWeight> NONE = List.of(new ScatterWeight(0, 1));

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 40, 2000})
    void learntShare_isTheBetaUpdate_whenNothingScatters(int trays) {
        // Without scatter the posterior is Beta(prior + counts) and prediction is beta-binomial, in closed form.
        var prior = new SharePrior(0.9, 20, NONE);
        var learnt = LearntShare.of(prior, Collections.nCopies(trays, new Rate(45, 54)));
        var exact = new BetaBinomial(88, 18 + 45.0 * trays, 2 + 9.0 * trays).counts();
        agree(exact, learnt.predictNew(88));
        double sum = 20 + 54.0 * trays;
        assertEquals((18 + 45.0 * trays) / sum, learnt.mean(), BY_GRID);
        assertEquals(Math.sqrt(learnt.mean() * (1 - learnt.mean()) / (sum + 1)), learnt.meanError(), BY_GRID);
        assertEquals(0, learnt.rho());
    }

    @Test
    void learntShare_holdsTheBeliefNearTheEnds_whenItsWeightIsSmall() {
        var learnt = LearntShare.of(new SharePrior(0.98, 2, NONE), List.of());
        var exact = new BetaBinomial(54, 1.96, 0.04).counts();
        for (int k = 0; k <= 54; k++) {
            assertEquals(exact.pmf(k), learnt.predictNew(54).pmf(k), 1e-3, "at " + k);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.002, 0.03, 0.2})
    void learntShare_agreesWithFineIntegration_whenGroupsScatter(double trueRho) {
        // Independent of the code under test: group chances by log gamma, 4000 means spread evenly over 0 to 1.
        var random = new SplittableRandom(SEED);
        var groups = new ArrayList<Rate>();
        for (int g = 0; g < 12; g++) {
            int eggs = 20 + random.nextInt(60);
            groups.add(new Rate(new ScatteredShare(0.85, trueRho).of(eggs).quantile(random.nextDouble()), eggs));
        }
        var prior = SharePrior.of(0.9, 10);
        var parts = new ArrayList<WholeCounts>();
        var logs = new ArrayList<Double>();
        for (int m = 0; m < 4000; m++) {
            double mean = (m + 0.5) / 4000;
            for (var scatter : prior.scatter()) {
                double log = 8 * Math.log(mean) + 0 * Math.log(1 - mean) + Math.log(scatter.weight());
                for (var g : groups) {
                    log += logChance(g, mean, scatter.rho());
                }
                logs.add(log);
                parts.add(new ScatteredShare(mean, scatter.rho()).of(54));
            }
        }
        double top = Collections.max(logs);
        double[] weights = logs.stream().mapToDouble(log -> Math.exp(log - top)).toArray();
        agree(WholeCounts.mixture(parts, weights), LearntShare.of(prior, groups).predictNew(54));
    }

    @Test
    void learntShare_findsScatterAndMean_fromManyTrays() {
        var random = new SplittableRandom(SEED);
        var groups = new ArrayList<Rate>();
        for (int g = 0; g < 500; g++) {
            groups.add(new Rate(new ScatteredShare(0.82, 0.05).of(54).quantile(random.nextDouble()), 54));
        }
        var learnt = LearntShare.of(SharePrior.of(0.9, 20), groups);
        assertEquals(0.82, learnt.mean(), 4 * learnt.meanError(), "seed " + SEED);
        assertEquals(0.05, learnt.rho(), 0.015, "seed " + SEED);
        double luckOnly = Math.sqrt(0.82 * 0.18 / (500 * 54));
        assertTrue(learnt.meanError() > 1.5 * luckOnly, "scatter widens what is known of the mean");
    }

    @Test
    void learntShare_isTheSame_inAnyOrderAndByParts() {
        var a = List.of(new Rate(45, 54), new Rate(30, 54));
        var b = List.of(new Rate(50, 54));
        var prior = SharePrior.of(0.9, 20);
        var once = LearntShare.of(prior, List.of(b.get(0), a.get(1), a.get(0)));
        assertEquals(once.mean(), LearntShare.of(prior, a).and(b).mean(), 1e-12);
    }

    @Test
    void prediction_narrowsAndFollowsTheGroup_onceSomeOfItIsSeen() {
        var groups = List.of(new Rate(48, 54), new Rate(30, 54), new Rate(52, 54), new Rate(44, 54), new Rate(10, 20));
        var learnt = LearntShare.of(SharePrior.of(0.85, 10), groups);
        var fresh = learnt.predictNew(34);
        var poor = learnt.predict(new OpenGroup(new Rate(10, 20), 34));
        assertTrue(poor.mean() < fresh.mean() - 3, poor.mean() + " against " + fresh.mean());
        assertTrue(poor.variance() < fresh.variance());
    }

    @Test
    void prediction_ofSeveralGroups_isWiderThanTheirSumAlone() {
        var learnt = LearntShare.of(SharePrior.of(0.85, 10), List.of(new Rate(40, 54)));
        var open = Collections.nCopies(6, OpenGroup.ofNew(54));
        var together = learnt.predictTogether(open);
        var alone = WholeCounts.sum(Collections.nCopies(6, learnt.predictNew(54)));
        assertEquals(alone.mean(), together.mean(), 1e-9);
        assertTrue(together.variance() > 1.5 * alone.variance());
        var quick = learnt.coarser(12).predictTogether(open);
        assertEquals(together.mean(), quick.mean(), 0.05);
        assertEquals(together.variance(), quick.variance(), 0.05 * together.variance());
        assertEquals(together.quantile(0.1), quick.quantile(0.1), 2);
    }

    @Test
    void thinning_keepsMeansInProportion_whenTheCountIsUncertain() {
        var learnt = LearntShare.of(SharePrior.of(0.85, 10), List.of(new Rate(40, 54)));
        var entering = new ScatteredShare(0.9, 0.05).of(54);
        var through = learnt.thin(entering, new Rate(0, 0));
        assertEquals(entering.mean() * learnt.mean(), through.mean(), 1e-9);
        assertEquals(1, through.cdf(54), 1e-9);
    }

    @Test
    void chanceOfAsFar_allowsForScatter() {
        var steady = LearntShare.of(SharePrior.of(0.85, 10), Collections.nCopies(30, new Rate(46, 54)));
        var random = new SplittableRandom(SEED);
        var trays = new ArrayList<Rate>();
        for (int g = 0; g < 30; g++) {
            trays.add(new Rate(new ScatteredShare(0.85, 0.15).of(54).quantile(random.nextDouble()), 54));
        }
        var scattered = LearntShare.of(SharePrior.of(0.85, 10), trays);
        var poor = new Rate(34, 54);
        assertTrue(steady.chanceOfAsFar(poor) < 0.01);
        assertTrue(scattered.chanceOfAsFar(poor) > 0.05);
        assertTrue(steady.chanceOfAsFar(new Rate(46, 54)) > 0.8);
        assertEquals(1, steady.chanceOfAsFar(new Rate(0, 0)), 1e-9);
    }

    @Test
    void cells_sumToOne_forAnyGroups() {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 30; i++) {
            var groups = new ArrayList<Rate>();
            for (int g = random.nextInt(40); g > 0; g--) {
                long eggs = random.nextLong(i % 5 == 0 ? 20_000 : 100);
                groups.add(new Rate(i % 4 == 0 ? eggs : random.nextLong(eggs + 1), eggs));
            }
            var learnt = LearntShare.of(SharePrior.of(0.05 + 0.9 * random.nextDouble(), 5), groups);
            double sum = learnt.cells().stream().mapToDouble(LearntCell::weight).sum();
            assertEquals(1, sum, 1e-8, groups + ", seed " + SEED);
            assertTrue(learnt.mean() > 0 && learnt.mean() < 1, groups + ", seed " + SEED);
            var coarse = learnt.coarser(10);
            assertEquals(learnt.mean(), coarse.mean(), 1e-3);
            assertEquals(
                    1, coarse.cells().stream().mapToDouble(LearntCell::weight).sum(), 1e-9);
        }
    }

    @Test
    void belief_isRefused_outsideItsRange() {
        assertThrows(OutOfRange.class, () -> SharePrior.of(1, 20));
        assertThrows(OutOfRange.class, () -> SharePrior.of(0.9, 0));
        assertThrows(OutOfRange.class, () -> new SharePrior(0.9, 20, List.of()));
        assertThrows(OutOfRange.class, () -> new ScatterWeight(0.1, 0));
    }

    @Test
    void likelihood_ofLargeGroups_isTheFullSum() {
        // Above 1000 eggs the sum is an integral with end terms; the group's log chance by log gamma has to agree.
        var many = new Rate(41_234, 50_000);
        var counts = new GroupCounts(List.of(many));
        for (double rho : new double[] {1e-4, 0.003, 0.05, 0.4}) {
            double ours =
                    counts.logLikelihood(0.8, 0.2, rho / (1 - rho)) - counts.logLikelihood(0.82, 0.18, rho / (1 - rho));
            assertEquals(logChance(many, 0.8, rho) - logChance(many, 0.82, rho), ours, 1e-6, "rho " + rho);
        }
        // And where scatter vanishes it becomes the binomial's without a step.
        double binomial = counts.logLikelihood(0.8, 0.2, 0);
        assertEquals(41_234 * Math.log(0.8) + 8_766 * Math.log(0.2), binomial, 1e-6);
        assertEquals(binomial, counts.logLikelihood(0.8, 0.2, 1e-15), 1e-4);
    }

    private static double logChance(Rate g, double mean, double rho) {
        if (rho == 0) {
            return g.count() * Math.log(mean) + (g.of() - g.count()) * Math.log(1 - mean);
        }
        double size = (1 - rho) / rho;
        return rising(mean * size, g.count()) + rising((1 - mean) * size, g.of() - g.count()) - rising(size, g.of());
    }

    private static double rising(double from, long steps) {
        return Gamma.logGamma(from + steps) - Gamma.logGamma(from);
    }

    private static void agree(WholeCounts exact, WholeCounts ours) {
        for (int k = 0; k <= exact.most(); k++) {
            assertEquals(exact.pmf(k), ours.pmf(k), BY_GRID, "at " + k);
        }
    }
}
