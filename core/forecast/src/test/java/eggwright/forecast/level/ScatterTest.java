package eggwright.forecast.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The guesses stand for the distributions that the model's page states: chances, means and mean squares agree. */
class ScatterTest {
    private static final Beforehand STAGE = new Beforehand(new double[Grid.POINTS], -0.04, 0.02, 0.7);

    @Test
    void guesses_haveTheChancesOfAllTogether() {
        for (var guesses :
                List.of(Scatter.slopes(STAGE), Scatter.drifts(STAGE), Scatter.sets(STAGE), Scatter.trays())) {
            assertEquals(1, mean(guesses, 0), 1e-12);
        }
    }

    @Test
    void guesses_haveTheMeansOfTheirDistributions() {
        assertEquals(-0.04, mean(Scatter.slopes(STAGE), 1), 1e-12);
        double halfNormal = Math.sqrt(2 / Math.PI);
        assertEquals(0.25 * 0.7 * halfNormal, mean(Scatter.sets(STAGE), 1), 0.02 * 0.175);
        assertEquals(0.1 * 0.7 * halfNormal, mean(Scatter.drifts(STAGE), 1), 0.03 * 0.07);
        assertEquals(0.05, mean(Scatter.trays(), 1), 0.05 * 0.05);
    }

    @Test
    void guesses_haveTheMeanSquaresOfTheirDistributions() {
        assertEquals(0.175 * 0.175, mean(Scatter.sets(STAGE), 2), 0.02 * 0.175 * 0.175);
        assertEquals(0.07 * 0.07, mean(Scatter.drifts(STAGE), 2), 0.06 * 0.07 * 0.07);
        assertEquals(2 * 0.05 * 0.05, mean(Scatter.trays(), 2), 0.12 * 2 * 0.05 * 0.05);
    }

    private static double mean(List<Scatter.Guess> guesses, int power) {
        return guesses.stream()
                .mapToDouble(g -> g.chance() * Math.pow(g.value(), power))
                .sum();
    }
}
