package eggwright.units;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class UnitsWallsTest {
    @Test
    void units_keepsToItsWalls() {
        Walls.ofRoom("eggwright.units").holdInTheCore();
    }
}
