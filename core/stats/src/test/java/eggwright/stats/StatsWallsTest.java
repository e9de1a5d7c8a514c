package eggwright.stats;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class StatsWallsTest {
    @Test
    void stats_keepsToItsWalls() {
        Walls.ofRoom("eggwright.stats").holdInTheCore();
    }
}
