package eggwright.desk.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.name.MachineName;
import eggwright.book.name.SetName;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.KnownBy;
import eggwright.climate.air.SetPoint;
import eggwright.climate.air.Surroundings;
import eggwright.climate.development.HatchExpected;
import eggwright.climate.development.Span;
import eggwright.climate.development.When;
import eggwright.climate.machine.MachineNow;
import eggwright.climate.machine.SetInside;
import eggwright.climate.weight.Advising;
import eggwright.climate.weight.Aim;
import eggwright.climate.weight.Estimate;
import eggwright.climate.weight.SetLoss;
import eggwright.climate.weight.Shells;
import eggwright.desk.machine.OneMachinePage.Advice;
import eggwright.desk.words.Words;
import eggwright.egg.air.MoistAir;
import eggwright.egg.air.Ventilation;
import eggwright.trade.Species;
import eggwright.units.Humidity;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What is said of the dial. The pheasant’s band is 11 to 12 % by transfer on day 21. */
final class AdviceWordsTest {
    private static final Instant NOW = Instant.parse("2027-05-12T17:00:00Z");
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Temperature HEAT = Temperature.ofFahrenheit(99.5);
    private static final Surroundings SEA = new Surroundings(Pressure.SEA_LEVEL, Ventilation.ASPIRATED);
    /** Of such shells eggs lose a little under 0.6 % a day at 52 %. */
    private static final double SHARE = 0.0019;

    private static SetInside set(String name, int day, double lostPct, Shells.From from) {
        var loss = new SetLoss(
                new SetName(name),
                Species.PHEASANT,
                from == Shells.From.WEIGHED ? 54 : 0,
                List.of(),
                new Shells(SHARE, SHARE / 20, from),
                new Estimate(lostPct, lostPct - 0.4, lostPct + 0.4),
                List.of());
        var then = new When(NOW, NOW.plusSeconds(3600), NOW.plusSeconds(7200));
        var hatch = new HatchExpected(then, then, then, then, new Span(0, 1, 2), new Span(0.1, 0.2, 0.3));
        var start = NOW.minus(Duration.ofDays(day));
        return new SetInside(
                new SetName(name),
                Species.PHEASANT,
                day,
                54,
                3,
                start,
                NOW,
                hatch,
                loss,
                KnownBy.READINGS,
                day * 24L,
                day * 24L);
    }

    private static Advice advice(KnownBy wetness, SetInside... sets) {
        var air = MoistAir.of(HEAT, new Humidity(52), Pressure.SEA_LEVEL);
        var inside = List.of(sets);
        var advice = Advising.of(
                inside.stream()
                        .map(s -> new Advising.InMachine(
                                s.loss(),
                                Aim.ofTrade(Species.PHEASANT),
                                s.startedAt().plus(Duration.ofDays(21)),
                                s.eggs()))
                        .toList(),
                new SetPoint(HEAT, new Humidity(52)),
                SEA,
                Advising.LIMITS,
                NOW);
        var hour = new AirHour(NOW.minusSeconds(3600), NOW, air, KnownBy.READINGS, wetness);
        var now = new MachineNow(new MachineName("Setter"), hour, new SetPoint(HEAT, new Humidity(52)), inside, advice);
        return new AdviceWords(
                        now,
                        SEA,
                        NOW,
                        ZONE,
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
                        .contains("Set 27-5 has lost as much as it should already. This is the wettest that is safe."),
                advice.toString());
    }

    @Test
    void severalSets_getOneSetting_andSeeWhatItCostsEach() {
        var advice = advice(
                set("27-4", 15, 7.0, Shells.From.WEIGHED),
                set("27-5", 8, 5.4, Shells.From.WEIGHED),
                set("27-6", 1, 0.2, Shells.From.PUBLISHED));

        var table = advice.together().orElseThrow();
        assertEquals(
                List.of("27-4", "27-5"),
                table.rows().stream().map(r -> r.getFirst().text()).toList());
        assertTrue(advice.then().contains("One set was not weighed twice and is left out of this."), advice.toString());
        assertEquals(3, advice.why().size());
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
