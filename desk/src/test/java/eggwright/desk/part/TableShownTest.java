package eggwright.desk.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.part.TableShown.Shape;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class TableShownTest {
    @Test
    void columnOfWholeNumbers_linesUp_andARowHeadNeverDoes() {
        var table = table("7|54|51 of 54", "8||not yet");

        assertEquals(Shape.TEXT, table.shape(0));
        assertEquals(Shape.NUMBER, table.shape(1));
        assertEquals(Shape.TEXT, table.shape(2));
    }

    @Test
    void tableTooWideForAPhone_isStacked_andSentencesHaveALineOfTheirOwn() {
        var story = table("Wed 5 May 19:12|Candled set 27-5, tray 39: 24 clear, 28 live|Alder");

        assertEquals("stack", story.style());
        assertEquals(Shape.SENTENCE, story.shape(1));
        assertEquals("", table("7|54|29").style());
    }

    @Test
    void rowOfAnotherWidth_isRefused_inTheSumsToo() {
        var heads = List.of("Tray", "Eggs");
        var row = List.of(Cell.of("7"), Cell.of(54));

        assertThrows(IllegalArgumentException.class, () -> new TableShown(heads, List.of(List.of(Cell.of("7")))));
        assertThrows(
                IllegalArgumentException.class, () -> new TableShown(heads, List.of(row), List.of(Cell.of("all"))));
    }

    private static TableShown table(String... lines) {
        return new TableShown(
                List.of("Tray", "Eggs", "Now"),
                Stream.of(lines)
                        .map(line ->
                                Stream.of(line.split("\\|", -1)).map(Cell::of).toList())
                        .toList());
    }
}
