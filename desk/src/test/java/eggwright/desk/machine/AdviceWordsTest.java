package eggwright.desk.machine;

import static eggwright.desk.machine.SetterNow.set;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.air.KnownBy;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Shells;
import eggwright.desk.machine.OneMachinePage.Advice;
import eggwright.desk.words.Words;
import eggwright.units.Temperature;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What is said of the dial. The pheasant’s band is 11 to 12 % by transfer on day 21. */
final class AdviceWordsTest {
    private static Advice advice(KnownBy wetness, SetInside... sets) {
        return new AdviceWords(
                        SetterNow.of(52, wetness, List.of(sets)),
                        SetterNow.SEA,
                        ZoneId.of("America/Chicago"),
                        new Degrees(Temperature.Scale.FAHRENHEIT, Locale.ENGLISH),
                        Words.beside(AdviceWords.class, Locale.ENGLISH))
                .advice();
    }

    private static Advice advice(SetInside... sets) {
        return advice(KnownBy.READINGS, sets);
    }

    @Test
    void habit_isNeverSetAgainstATable_whereNothingWasWeighed() {
        // A guess of published shells says that this set is far off; nobody has weighed it.
        var advice = advice(set("27-5", 15, 3, Shells.From.PUBLISHED), set("27-6", 8, 12, Shells.From.EARLIER_SETS));

        assertEquals("Weigh first, and leave the dial where it is", advice.headline());
        assertFalse(String.join(" ", advice.then()).contains("Turn"), advice.toString());
        assertFalse(String.join(" ", advice.why()).contains("asks for"), advice.toString());
        assertTrue(advice.together().isEmpty());
    }

    @Test
    void oneSet_thatLandsInItsBand_leavesTheDial() {
        var advice = advice(set("27-5", 15, 8.0, Shells.From.WEIGHED));

        assertTrue(advice.headline().startsWith("Leave the wet bulb at 83."), advice.headline());
        assertEquals(List.of("As it is, the set lands in its band."), advice.then());
    }

    @Test
    void oneSet_thatLostTooLittle_turnsTheDialDown() {
        var advice = advice(set("27-5", 12, 5.4, Shells.From.WEIGHED));

        assertTrue(
                advice.headline().matches("Turn the wet bulb to 8[0-3]\\.\\d\u00a0°F \\(4\\d\u00a0%\\)"),
                advice.headline());
        assertTrue(advice.then().getFirst().startsWith("It stands at 83."), advice.toString());
        assertTrue(advice.why().getFirst().contains("its band is 11.0 to 12.0\u00a0%, the trade’s"), advice.toString());
        assertTrue(advice.why().getFirst().contains("95 in 100"), advice.toString());
    }

    @Test
    void setThatLostAllAlready_isToldSo() {
        var advice = advice(set("27-5", 17, 14, Shells.From.WEIGHED));

        assertTrue(advice.headline().contains("(70\u00a0%)"), advice.headline());
        assertTrue(
                advice.then()
                        .contains(
                                "Set 27-5 has lost as much as it should already, and no air stops it. The wettest that is safe is 70\u00a0%."),
                advice.toString());
    }

    @Test
    void severalSets_getOneSetting_andSeeWhatItCostsEach() {
        var advice = advice(
                set("27-4", 15, 7.0, Shells.From.WEIGHED),
                set("27-5", 8, 5.4, Shells.From.WEIGHED),
                set("27-6", 1, 0.2, Shells.From.PUBLISHED));

        assertTrue(advice.headline().startsWith("Turn the wet bulb to "), advice.headline());
        var table = advice.together().orElseThrow();
        assertEquals(
                List.of("27-4, pheasant", "27-5, pheasant"),
                table.rows().stream().map(r -> r.getFirst().text()).toList());
        assertTrue(advice.why().getLast().contains("without a voice here: 27-6, pheasant, day 1."), advice.toString());
        assertEquals(3, advice.why().size());
    }

    @Test
    void severalSets_thatAllLand_leaveTheDial_andTheTableSaysNothingOfTurning() {
        var advice = advice(set("27-4", 15, 8.0, Shells.From.WEIGHED), set("27-5", 12, 6.2, Shells.From.WEIGHED));

        assertTrue(advice.headline().startsWith("Leave the wet bulb at 83."), advice.headline());
        assertEquals(
                List.of("Set", "Day", "Band", "As it is", "What it costs"),
                advice.together().orElseThrow().heads());
    }

    @Test
    void humidityThatNobodyRead_isSaid() {
        var advice = advice(KnownBy.SET_POINT, set("27-5", 12, 5.4, Shells.From.WEIGHED));

        assertTrue(
                advice.then().getLast().startsWith("Nobody read the humidity; 52\u00a0% is taken"), advice.toString());
    }

    @Test
    void emptyMachine_hasNothingToTurn() {
        assertEquals("Nothing to turn: it is empty", advice().headline());
        assertEquals(
                "Nothing to turn for the weight",
                advice(set("27-3", 22, 12, Shells.From.WEIGHED)).headline());
    }
}
