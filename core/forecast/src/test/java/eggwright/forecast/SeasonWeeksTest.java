package eggwright.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeasonWeeksTest {
    private static final LocalDate FIRST = LocalDate.of(2027, 4, 5);

    @Test
    void weeks_countFromTheMiddle_andBeginAnewInSpring() {
        var days = List.of(FIRST, FIRST.plusWeeks(6), FIRST.plusWeeks(12), FIRST.plusWeeks(52));
        assertEquals(List.of(-6.0, 0.0, 6.0, -6.0), SeasonWeeks.of(days));
    }

    @Test
    void weeks_goNoFurther_whereBirdsLayTheYearRound() {
        var days = new java.util.ArrayList<LocalDate>();
        for (int week = 0; week < 60; week++) {
            days.add(FIRST.plusWeeks(week));
        }
        assertEquals(10.0, SeasonWeeks.of(days).getLast());
    }
}
