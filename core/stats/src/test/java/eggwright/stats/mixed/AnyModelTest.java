package eggwright.stats.mixed;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands in a small book, a model of it is answered, or refused in words. */
class AnyModelTest {
    private static final int MODELS = 150;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 54, 3000})
    void fit_answersOrRefuses_whateverWasCounted(int mostEggs) {
        for (long seed = 0; seed < MODELS; seed++) {
            MixedOutcome outcome;
            try {
                outcome = model(new Random(1000L * mostEggs + seed), mostEggs).fit();
            } catch (OutOfRange refused) {
                assertFalse(String.valueOf(refused.getMessage()).isBlank());
                continue;
            }
            if (outcome instanceof MixedOutcome.Fitted fit) {
                assertFinite(fit, "seed " + seed + " of " + mostEggs);
            }
        }
    }

    private static void assertFinite(MixedOutcome.Fitted fit, String what) {
        assertTrue(Double.isFinite(fit.logLikelihood()) && fit.logLikelihood() <= 1e-9, what);
        for (var effect : fit.fixed()) {
            assertTrue(Double.isFinite(effect.estimate()), what);
            assertTrue(!fit.converged() || effect.standardError() > 0, what + ": " + fit);
        }
        for (var group : fit.random()) {
            assertTrue(Double.isFinite(group.standardDeviation()), what);
            assertTrue(Arrays.stream(group.effects()).allMatch(Double::isFinite), what);
            assertTrue(Arrays.stream(group.deviations()).allMatch(Double::isFinite), what);
        }
        assertTrue(fit.converged(), what + " did not settle: " + fit);
    }

    private static MixedModel model(Random random, int mostEggs) {
        int rows = 1 + random.nextInt(40);
        double share = random.nextInt(4) == 0 ? random.nextInt(2) : random.nextDouble();
        double scatter = random.nextInt(3) * 1.2;
        int[] yes = new int[rows];
        int[] all = new int[rows];
        double[] days = new double[rows];
        for (int row = 0; row < rows; row++) {
            all[row] = random.nextInt(mostEggs + 1);
            days[row] = random.nextInt(1 + random.nextInt(15));
            double own = share * Math.exp(-Math.abs(scatter * random.nextGaussian()));
            for (int egg = 0; egg < all[row]; egg++) {
                yes[row] += random.nextDouble() < own ? 1 : 0;
            }
        }
        var fixed = new ArrayList<Term>();
        if (random.nextBoolean()) {
            fixed.add(new Term.Numbers("storage_days", days));
        }
        if (random.nextBoolean()) {
            fixed.add(new Term.Category("machine", random.ints(rows, 0, 3).toArray(), List.of("A", "B", "C")));
        }
        if (fixed.size() == 2 && random.nextBoolean()) {
            fixed.add(new Term.Interaction(fixed.get(0), fixed.get(1)));
        }
        var groupings = new ArrayList<Grouping>();
        for (var name : List.of("pen", "week", "tray")) {
            if (random.nextInt(3) > 0) {
                groupings.add(grouping(
                        name, random.ints(rows, 0, 1 + random.nextInt(rows)).toArray()));
            }
        }
        return new MixedModel(new BinomialCounts(yes, all), fixed, groupings);
    }

    private static Grouping grouping(String name, int[] drawn) {
        int[] used = Arrays.stream(drawn).distinct().toArray();
        return new Grouping(
                name,
                Arrays.stream(drawn)
                        .map(level -> IntStream.range(0, used.length)
                                .filter(i -> used[i] == level)
                                .findFirst()
                                .orElseThrow())
                        .toArray(),
                Arrays.stream(used).mapToObj(Integer::toString).toList());
    }
}
