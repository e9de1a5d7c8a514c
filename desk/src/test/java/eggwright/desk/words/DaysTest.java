package eggwright.desk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import org.junit.jupiter.api.Test;

final class DaysTest {
    private static final LocalDate MONDAY = LocalDate.parse("2027-04-05");

    @Test
    void days_areWrittenInTheLanguageOfThePage() {
        assertEquals("Mon 5 Apr", Days.in(Locale.ENGLISH).day(MONDAY));
        assertEquals("lun. 5 avr.", Days.in(Locale.FRENCH).day(MONDAY));
    }

    @Test
    void momentsAndWeeks_areWrittenByTheirPattern() {
        assertEquals("Mon 5 Apr 18:30", Days.in(Locale.ENGLISH).stamp(LocalDateTime.parse("2027-04-05T18:30")));
        assertEquals("18:30", Days.in(Locale.ENGLISH).hour(LocalDateTime.parse("2027-04-05T18:30")));
        assertEquals("2027-04-05 18:30", Days.in(Locale.ENGLISH).recordStamp(LocalDateTime.parse("2027-04-05T18:30")));
        assertEquals("Monday 5 April", Days.in(Locale.ENGLISH).fullDay(MONDAY));
        assertEquals("5 April", Days.in(Locale.ENGLISH).longDay(MONDAY));
        assertEquals("week of 5 Apr", Days.in(Locale.ENGLISH).week(MONDAY));
    }
}
