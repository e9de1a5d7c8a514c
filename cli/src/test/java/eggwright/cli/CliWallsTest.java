package eggwright.cli;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class CliWallsTest {
    @Test
    void walls_hold() {
        Walls.ofRoom("eggwright.cli").hold();
    }
}
