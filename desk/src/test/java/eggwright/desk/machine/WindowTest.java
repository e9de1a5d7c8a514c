package eggwright.desk.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.desk.form.Typed;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class WindowTest {
    private static final Instant NOON = Instant.parse("2027-05-12T17:00:00Z");

    private static Window window(String... asked) {
        return Window.of(
                Typed.of(
                        asked.length == 0
                                ? Map.of()
                                : Map.of("span", asked[0], "to", asked.length > 1 ? asked[1] : "")),
                NOON);
    }

    @Test
    void window_isTheLastDay_whereNothingWasAsked() {
        assertEquals(new Window(Span.DAY, NOON.minus(Duration.ofDays(1)), NOON, NOON), window());
        assertEquals(window(), window("fortnight", "2099-01-01T00:00:00Z"));
    }

    @Test
    void turns_overlapByAQuarter_andComeBack() {
        var week = window("week");

        assertEquals("?span=week&to=2027-05-07T11:00:00Z", week.earlier());
        assertEquals("?span=week", window("week", "2027-05-07T11:00:00Z").later());
        assertEquals(
                "?span=month&to=2027-05-07T11:00:00Z",
                window("week", "2027-05-07T11:00:00Z").as(Span.MONTH));
    }

    @Test
    void season_beginsWithTheFirstReading_butIsNeverADayLong() {
        var april = Instant.parse("2027-04-01T00:00:00Z");

        assertEquals(april, window("season").since(Optional.of(april)).from());
        assertEquals(
                NOON.minus(Duration.ofDays(14)),
                window("season").since(Optional.of(NOON)).from());
        assertEquals(
                NOON.minus(Duration.ofDays(120)),
                window("season").since(Optional.of(Instant.EPOCH)).from());
        assertEquals(window("week"), window("week").since(Optional.of(NOON)));
    }

    @Test
    void pct_goesFromTheLeftEdgeToTheRight() {
        assertEquals(0, window().pct(NOON.minus(Duration.ofDays(1))));
        assertEquals(75, window().pct(NOON.minus(Duration.ofHours(6))));
    }
}
