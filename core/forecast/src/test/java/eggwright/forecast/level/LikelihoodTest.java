package eggwright.forecast.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.forecast.chance.Grid;
import eggwright.forecast.chance.LuckScale;
import java.util.List;
import java.util.Map;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;

class LikelihoodTest {
    private static final double TRAY = 0.001;

    /** Against Hipparchus' log-gamma. */
    @Test
    void risingProduct_isTheDifferenceOfLogGammas() {
        for (double a : List.of(1e-4, 0.3, 2.5, 60.0, 5e4)) {
            for (int k : List.of(0, 1, 7, 54, 150, 151, 4000)) {
                double expected = Gamma.logGamma(a + k) - Gamma.logGamma(a);
                assertEquals(expected, Likelihood.logRising(a, k), 1e-9 * Math.max(1, Math.abs(expected)), a + " " + k);
            }
        }
    }

    @Test
    void counts_areLikeliest_whereTheirShareIs() {
        var logs =
                new Likelihood(LuckScale.even(), List.of(new Observed.Count(54, 44, 1, 1.2, Map.of())), TRAY).logs()[0];
        int best = 0;
        for (int i = 0; i < Grid.POINTS; i++) {
            best = logs[i] > logs[best] ? i : best;
        }
        assertEquals(Math.log(44.0 / 10), 1.2 + Grid.at(best), Grid.STEP);
    }
}
