package eggwright.book;

import eggwright.testkit.walls.Walls;
import org.junit.jupiter.api.Test;

class BookWallsTest {
    @Test
    void book_keepsToItsWalls() {
        Walls.ofRoom("eggwright.book").holdInTheCore();
    }
}
