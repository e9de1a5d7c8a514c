package eggwright.desk;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

final class DeskWallsTest {
    @Test
    void desk_holdsTheWallsOfTheEdge() {
        Walls.ofRoom("eggwright.desk").hold();
    }
}
