package eggwright.egg;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class EggWallsTest {
    @Test
    void egg_keepsToItsWalls() {
        Walls.ofRoom("eggwright.egg").holdInTheCore();
    }
}
