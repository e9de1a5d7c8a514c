package eggwright.climate;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class ClimateWallsTest {
    @Test
    void climate_keepsToItsWalls() {
        Walls.ofRoom("eggwright.climate").holdInTheCore();
    }
}
