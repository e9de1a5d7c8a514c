package eggwright.invented;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class InventedWallsTest {
    @Test
    void room_keepsItsWalls_asTheMapSays() {
        Walls.ofRoom("eggwright.invented").holdInTheCore();
    }
}
