package eggwright.forecast;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class ForecastWallsTest {
    @Test
    void forecast_keepsToItsWalls() {
        Walls.ofRoom("eggwright.forecast").holdInTheCore();
    }
}
