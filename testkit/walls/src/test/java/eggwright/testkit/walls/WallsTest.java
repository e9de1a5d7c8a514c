package eggwright.testkit.walls;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WallsTest {
    @ParameterizedTest
    @ValueSource(strings = {"clock", "files", "sql", "cycle", "state", "unmarked"})
    void walls_catchThePlantedBreach(String breach) {
        var walls = Walls.ofPlanted("eggwright.planted." + breach);
        assertThrows(AssertionError.class, walls::holdInTheCore);
    }

    @Test
    void walls_letACleanRoomPass() {
        assertDoesNotThrow(() -> Walls.ofPlanted("eggwright.planted.clean").holdInTheCore());
    }

    @Test
    void walls_refuseARoomThatHasNoClasses() {
        var walls = Walls.ofRoom("eggwright.nowhere");
        assertThrows(AssertionError.class, walls::hold);
    }

    @Test
    void walls_holdHereToo() {
        Walls.ofRoom("eggwright.testkit.walls").hold();
    }
}
