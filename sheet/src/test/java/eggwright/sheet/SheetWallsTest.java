package eggwright.sheet;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class SheetWallsTest {
    @Test
    void walls_hold() {
        Walls.ofRoom("eggwright.sheet").hold();
    }
}
