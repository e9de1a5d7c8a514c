package eggwright.today;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class TodayWallsTest {
    @Test
    void today_keepsToItsWalls() {
        Walls.ofRoom("eggwright.today").holdInTheCore();
    }
}
