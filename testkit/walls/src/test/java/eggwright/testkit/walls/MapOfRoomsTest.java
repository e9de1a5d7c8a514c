package eggwright.testkit.walls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MapOfRoomsTest {
    private static final Path ROOT = Path.of("..", "..");

    @Test
    void map_holdsForEveryPomOfTheHouse() {
        var rooms = Poms.under(ROOT);
        var names = rooms.stream().map(Room::name).collect(Collectors.toSet());
        assertTrue(names.containsAll(List.of("units", "book", "wire", "store", "desk", "cli")), names.toString());
        assertEquals(List.of(), MapOfRooms.breaches(rooms));
    }

    @ParameterizedTest
    @CsvSource({
        "core-uses-store, rates may not use store",
        "arrow-not-drawn, today may not use forecast",
        "edge-library-in-core, stats is a core room and may not use org.xerial:sqlite-jdbc",
        "core-room-at-the-edge, 'book is a core room, but its pom is no child of the core''s'",
        "room-not-on-the-map, lore is not on the map of rooms",
    })
    void map_catchesThePlantedPom(String pom, String breach) {
        assertEquals(List.of(breach), MapOfRooms.breaches(List.of(planted(pom))));
    }

    @Test
    void map_letsAPomPassThatIsAsDrawn() {
        assertEquals(List.of(), MapOfRooms.breaches(List.of(planted("as-drawn"))));
    }

    private static Room planted(String pom) {
        var name = "/eggwright/planted/poms/" + pom + ".xml";
        try {
            return Poms.read(Path.of(Objects.requireNonNull(MapOfRoomsTest.class.getResource(name), name)
                    .toURI()));
        } catch (URISyntaxException impossible) {
            throw new AssertionError(impossible);
        }
    }
}
