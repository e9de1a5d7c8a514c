package eggwright.rates;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class RatesWallsTest {
    @Test
    void rates_keepsToItsWalls() {
        Walls.ofRoom("eggwright.rates").holdInTheCore();
    }
}
