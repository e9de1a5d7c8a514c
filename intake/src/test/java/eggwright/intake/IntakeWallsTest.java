package eggwright.intake;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class IntakeWallsTest {
    @Test
    void walls_hold() {
        Walls.ofRoom("eggwright.intake").hold();
    }
}
