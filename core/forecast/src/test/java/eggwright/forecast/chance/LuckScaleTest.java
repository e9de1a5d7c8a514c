package eggwright.forecast.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LuckScaleTest {
    /** Lost on every farm, whatever its luck. */
    private static final double EVEN_LOSS = 0.08;
    /** Lost on published farms by what scatters. */
    private static final double LOSS = 0.15;

    private static double logit(double share) {
        return Math.log(share / (1 - share));
    }

    private static double through(double loss) {
        return (1 - loss) * (1 - EVEN_LOSS);
    }

    /** By d logit(through) / d logit(loss), worked out by hand. */
    private static double moved(double loss) {
        return loss / (1 - through(loss));
    }

    private static LuckScale ofOneLoss() {
        var random = new SplittableRandom(3);
        var losses = DoubleStream.generate(random::nextGaussian)
                .limit(2000)
                .map(z -> 1 / (1 + (1 - LOSS) / LOSS * Math.exp(-0.9 * z)))
                .toArray();
        return LuckScale.of(
                logit(through(LOSS)),
                DoubleStream.of(losses).map(p -> logit(through(p))).toArray(),
                DoubleStream.of(losses).map(p -> moved(p) / moved(LOSS)).toArray());
    }

    /** Where a single loss scatters, luck moves its logit by the same wherever it stands: the place is that logit, to a factor. */
    @Test
    void place_goesWithTheLogitOfTheLoss_whereOneLossScatters() {
        var scale = ofOneLoss();
        for (double loss : new double[] {0.04, 0.08, 0.15, 0.3, 0.45}) {
            double expected = moved(LOSS) * (logit(LOSS) - logit(loss));
            // Farms within 0.2 logits are taken together, and few lie near the ends: 0.032 off where the loss is 0.04.
            assertEquals(expected, scale.place(logit(through(loss))), 0.04, "loss " + loss);
        }
    }

    @Test
    void luck_movesPoorFarmsFarther_inLogits() {
        var scale = ofOneLoss();
        double poor = scale.logit(-1) - scale.logit(-1.1);
        double good = scale.logit(0.5) - scale.logit(0.4);
        assertTrue(poor > 1.2 * good, poor + " against " + good);
    }

    @Test
    void logit_leadsBackFromThePlace_alsoFarOutside() {
        var scale = ofOneLoss();
        for (double logit = -6; logit <= 6; logit += 0.37) {
            assertEquals(logit, scale.logit(scale.place(logit)), 0.01, "logit " + logit);
        }
    }

    @Test
    void farmsThatAreMovedAlike_keepTheirLogits() {
        var farms = IntStream.range(0, 300).mapToDouble(i -> i / 100.0).toArray();
        var alike = LuckScale.of(
                1.5, farms, DoubleStream.generate(() -> 1).limit(300).toArray());
        var even = LuckScale.even();
        for (double logit : new double[] {-2, 0, 1.5, 4}) {
            assertEquals(logit - 1.5, alike.place(logit), 1e-9);
            assertEquals(logit, even.place(logit), 1e-9);
            assertEquals(logit, even.logit(logit), 1e-9);
        }
    }
}
