package eggwright.desk.machine;

import static eggwright.desk.machine.SetterNow.set;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.air.KnownBy;
import eggwright.climate.machine.SetInside;
import eggwright.climate.rollup.Band;
import eggwright.climate.weight.Shells;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The pheasant’s band is 11 to 12 % by day 21. */
final class LandingBandTest {
    /** Of plain algebra: nothing is lost but rounding. */
    private static final double EXACT = 1e-9;

    private static Optional<Band> band(SetInside... sets) {
        return new LandingBand(SetterNow.of(52, KnownBy.READINGS, List.of(sets)), SetterNow.SEA, SetterNow.NOW)
                .humidities();
    }

    /** Runs a setter on, and tells where its only set lands. */
    private static double lands(SetInside set, double humidityPct) {
        return SetterNow.of(humidityPct, KnownBy.READINGS, List.of(set))
                .advice()
                .sets()
                .getFirst()
                .projected()
                .pct();
    }

    @Test
    void set_landsOnTheEndsOfItsBand_whenRunAtTheEndsOfTheHumidities() {
        var set = set("27-5", 12, 5.4, Shells.From.WEIGHED);
        var humidities = band(set).orElseThrow();

        assertEquals(12, lands(set, humidities.low()), EXACT);
        assertEquals(11, lands(set, humidities.high()), EXACT);
    }

    @Test
    void severalSets_shareWhatSuitsThemAll_andHaveNothingWhereNothingDoes() {
        var slow = set("27-4", 12, 5.4, Shells.From.WEIGHED);
        var near = set("27-5", 12, 5.5, Shells.From.WEIGHED);
        var fast = set("27-6", 12, 8.5, Shells.From.WEIGHED);

        assertEquals(
                band(near).orElseThrow().low(), band(slow, near).orElseThrow().low(), EXACT);
        assertEquals(
                band(slow).orElseThrow().high(), band(slow, near).orElseThrow().high(), EXACT);
        assertTrue(band(slow, fast).isEmpty());
    }

    @Test
    void guess_hasNoBand() {
        assertTrue(band(set("27-5", 12, 5.4, Shells.From.PUBLISHED)).isEmpty());
        assertTrue(band().isEmpty());
    }
}
