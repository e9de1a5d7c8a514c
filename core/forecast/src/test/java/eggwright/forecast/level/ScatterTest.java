package eggwright.forecast.level;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The guesses stand for the distributions that the model's page states: chances, means and mean squares agree. */
class ScatterTest {
    @Test
    void guesses_haveTheChancesOfAllTogether() {
        for (var guesses : List.of(Scatter.drifts(), Scatter.sets(), Scatter.pens(), Scatter.trays())) {
            assertEquals(1, mean(guesses, 0), 1e-12);
        }
    }

    @Test
    void guesses_haveTheMeansOfTheirDistributions() {
        double halfNormal = Math.sqrt(2 / Math.PI);
        assertEquals(0.25 * halfNormal, mean(Scatter.sets(), 1), 0.02 * 0.25);
        assertEquals(0.1 * halfNormal, mean(Scatter.drifts(), 1), 0.03 * 0.1);
        assertEquals(0.35 * halfNormal, mean(Scatter.pens(), 1), 0.03 * 0.35);
        assertEquals(0.05, mean(Scatter.trays(), 1), 0.05 * 0.05);
    }

    @Test
    void guesses_haveTheMeanSquaresOfTheirDistributions() {
        assertEquals(0.25 * 0.25, mean(Scatter.sets(), 2), 0.02 * 0.25 * 0.25);
        assertEquals(0.1 * 0.1, mean(Scatter.drifts(), 2), 0.06 * 0.1 * 0.1);
        assertEquals(0.35 * 0.35, mean(Scatter.pens(), 2), 0.06 * 0.35 * 0.35);
        assertEquals(2 * 0.05 * 0.05, mean(Scatter.trays(), 2), 0.12 * 2 * 0.05 * 0.05);
    }

    private static double mean(List<Scatter.Guess> guesses, int power) {
        return guesses.stream()
                .mapToDouble(g -> g.chance() * Math.pow(g.value(), power))
                .sum();
    }
}
