package eggwright.trade;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class TradeWallsTest {
    @Test
    void trade_keepsToItsWalls() {
        Walls.ofRoom("eggwright.trade").holdInTheCore();
    }
}
