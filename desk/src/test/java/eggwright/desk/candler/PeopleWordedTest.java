package eggwright.desk.candler;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.PersonName;
import eggwright.desk.candler.CandlersPage.Fact;
import eggwright.desk.live.LiveBook;
import eggwright.rates.Basis;
import eggwright.rates.candler.Candler;
import eggwright.rates.candler.CandlerReport;
import eggwright.rates.candler.FalseClears;
import eggwright.rates.candler.MissedClears;
import eggwright.rates.candler.NotTold;
import eggwright.units.Rate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PeopleWordedTest {
    private static final Rate NONE = new Rate(0, 0);

    private static CandlersPage.Person worded(Candler candler, Rate hatchOfFertile) {
        return new PeopleWorded(new CandlerReport(List.of(candler), hatchOfFertile), Locale.ENGLISH)
                .page()
                .people()
                .getFirst();
    }

    private static Map<String, String> texts(List<Fact> facts) {
        return facts.stream().collect(Collectors.toMap(Fact::name, Fact::text));
    }

    @Test
    void person_isToldRatesWithTheirCounts_andTheCostInChicksAndRoom() {
        var person = worded(
                new Candler(
                        new PersonName("Wren"),
                        12,
                        new FalseClears(30, new Rate(2, 20), new Rate(5, 20)),
                        new MissedClears(new Rate(3, 28), Basis.MIXED, 2, 9, Map.of(NotTold.STILL_IN, 3), 48, 3)),
                new Rate(320, 400));
        assertEquals("Wren", person.name());
        assertEquals("12 looks noted", person.looks());
        var clears = texts(person.clears());
        assertEquals("20 eggs, opened and named; 10 not, or not on their own.", clears.get("Opened"));
        assertEquals(
                "About 1.6 chicks in those that were opened. Were the other 10 like these, 0.8 chicks more (0.2 to 2.4).",
                clears.get("Cost"));
        var rate = person.clears().get(2).rates().getFirst();
        assertEquals(2, rate.count());
        assertEquals(20, rate.of());
        var misses = texts(person.misses());
        assertEquals("48 days in a machine, all eggs together; 3 places in the hatcher.", misses.get("Cost"));
        assertEquals("3 looks wait for eggs that are still in a machine.", misses.get("Not told"));
        assertTrue(misses.getOrDefault("Missed", "").contains("rather too low"));
    }

    @Test
    void person_isHeldNothing_whenNothingWasOpened() {
        var person = worded(
                new Candler(
                        LiveBook.nobodyNamed(),
                        1,
                        new FalseClears(4, NONE, NONE),
                        new MissedClears(NONE, Basis.OPENED, 0, 0, Map.of(NotTold.NOT_ALL_EGGS, 1), 0, 0)),
                NONE);
        assertEquals("No name given", person.name());
        assertEquals(
                Map.of(
                        "Taken out",
                        "4 eggs",
                        "Opened",
                        "None that were opened on their own, so nothing can be said of them."),
                texts(person.clears()));
        assertEquals(Map.of("Not told", "1 look was at a part of the eggs."), texts(person.misses()));
    }
}
