package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.SpeciesOverridden;
import eggwright.today.schedule.LookDay;
import eggwright.today.schedule.Schedule;
import eggwright.today.schedule.SpeciesSchedule;
import eggwright.trade.Species;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every set goes in on Monday 5 April 2027 at 8. */
class ScheduleTest {
    private static SpeciesSchedule of(Species species, SpeciesOverridden... own) {
        var farm = Farmhouse.usual();
        for (var figure : own) {
            farm.note(on("2027-03-02T08:00"), figure);
        }
        farm.note(on("2027-04-05T08:00"), setting("14", load(1, species, 54)));
        var picture = farm.picture();
        return Schedule.of(picture.set(set("14")).orElseThrow(), picture.farm())
                .bySpecies()
                .getFirst();
    }

    /**
     * Transfer day and the days on which chicks come, of the table "Total incubation time to hatch, time for transfer to
     * hatcher" (TAMU-B6092, seen in a copy, attribution recalled). Red-legged partridge: GONZALEZ-ITEA and RLP-TEMP, seen.
     * Grey partridge: from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "PHEASANT,21,24,25",
        "BOBWHITE,21,23,23",
        "CHUKAR,20,23,24",
        "RED_LEGGED_PARTRIDGE,20,23,24",
        "GREY_PARTRIDGE,21,23,25",
        "COTURNIX,15,17,18",
        "TURKEY,25,28,28",
        "GUINEA_FOWL,25,28,28",
        "MALLARD,25,28,28",
        "PEAFOWL,25,28,29",
        "CHICKEN,18,21,21"
    })
    void schedule_followsTheHandbook(Species species, int transfer, int shortest, int longest) {
        var dates = of(species);
        assertEquals(transfer, dates.dayOf(dates.transfer().toLocalDate()));
        assertTrue(dates.dayOf(dates.hatchFrom().toLocalDate()) <= shortest);
        assertTrue(dates.dayOf(dates.takeOff().toLocalDate()) >= longest);
        assertEquals(18, dates.transfer().getHour());
        assertTrue(dates.firstPip().isBefore(dates.hatchFrom()));
    }

    @Test
    void looks_ofADayNextToAnother_shareNoDay() {
        var dates = of(Species.PHEASANT, new SpeciesOverridden(Species.PHEASANT, "candling_days", "7;8;14"));
        assertEquals(
                List.of("7: 5-7", "8: 8-10", "14: 12-16"),
                dates.looks().stream().map(ScheduleTest::words).toList());
    }

    private static String words(LookDay look) {
        return look.day() + ": " + look.firstDay() + "-" + look.lastDay();
    }

    @Test
    void aLastTurnOfItsOwn_isStrongerThanWhatFollowsFromTheTransfer() {
        var dates = of(
                Species.PHEASANT,
                new SpeciesOverridden(Species.PHEASANT, "last_turn_day", "18"),
                new SpeciesOverridden(Species.PHEASANT, "transfer_day", "20"));
        assertEquals(18, dates.dayOf(dates.lastTurn().toLocalDate()));
        assertEquals(20, dates.dayOf(dates.transfer().toLocalDate()));
    }

    @Test
    void schedule_hasALineForEachSpecies() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-04-05T08:00"), setting("14", load(1, Species.CHUKAR, 54), load(2, Species.PHEASANT, 54)));
        var picture = farm.picture();
        assertEquals(
                List.of(Species.PHEASANT, Species.CHUKAR),
                Schedule.of(picture.set(set("14")).orElseThrow(), picture.farm()).bySpecies().stream()
                        .map(SpeciesSchedule::species)
                        .toList());
    }
}
