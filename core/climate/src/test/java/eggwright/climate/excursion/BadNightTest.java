package eggwright.climate.excursion;

import static eggwright.climate.reading.Logger.CELSIUS;
import static eggwright.climate.reading.Logger.MONDAY;
import static eggwright.climate.reading.Logger.every;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.climate.development.Warmth;
import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Cut;
import eggwright.climate.rollup.Rollups;
import eggwright.climate.sensor.Corrections;
import eggwright.units.Temperature;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class BadNightTest {
    private static final Band BAND = new Band(37, 38);
    private static final Cut TEN_MINUTES = new Cut.Every(Duration.ofMinutes(10));
    private static final Instant NIGHT = Instant.parse("2027-04-10T04:00:00Z");

    private static List<Excursion> found(double... everyFiveMinutes) {
        return Excursions.of(
                Rollups.of(CELSIUS, every(300, everyFiveMinutes), Corrections.NONE, TEN_MINUTES, null), BAND);
    }

    private static double[] held(double celsius, int times) {
        var all = new double[times];
        Arrays.fill(all, celsius);
        return all;
    }

    private static double[] joined(double[]... parts) {
        return Arrays.stream(parts).flatMapToDouble(Arrays::stream).toArray();
    }

    private static NightCost cut(double hours, double room, double developed) {
        var end = NIGHT.plus(Duration.ofMinutes(Math.round(hours * 60)));
        return NightReckoning.of(NotedNight.air(NIGHT, end, room, 37.5), Excursion.Kind.COLD, 37.5, developed);
    }

    @Test
    void powerCut_isFoundInTheReadings_withItsDepth() {
        var night = found(joined(held(37.5, 12), held(33, 12), held(30.2, 12), held(37.5, 12)));
        assertEquals(
                List.of(new Excursion(
                        Excursion.Kind.COLD, MONDAY.plusSeconds(3600), MONDAY.plusSeconds(3 * 3600), 30.2)),
                night);
    }

    @Test
    void openDoor_isLetGo() {
        assertEquals(List.of(), found(joined(held(37.5, 12), held(35, 2), held(37.5, 12))));
    }

    @Test
    void twoSpells_withAShortPause_areOne() {
        assertEquals(1, found(joined(held(39, 6), held(37.5, 4), held(39.2, 6))).size());
    }

    @Test
    void steadyMachine_isItsOwnBand_andNotHeldAgainstATable() {
        var steady = Rollups.of(CELSIUS, every(1200, held(38.3, 300)), Corrections.NONE, Cut.HOUR, null);
        var band = WorkingBand.of(steady, Temperature.ofCelsius(37.5));
        assertEquals(List.of(), Excursions.of(steady, band));
        assertEquals(new Band(37, 38), WorkingBand.of(List.of(), Temperature.ofCelsius(37.5)));
    }

    @Test
    void fullMachine_feelsLess_thanAFewEggs() {
        var cost = cut(4, 18, 0.5);
        assertTrue(cost.feltCelsius().low() < 19, cost.toString());
        assertTrue(cost.feltCelsius().likely() > 22 && cost.feltCelsius().likely() < 26, cost.toString());
        assertTrue(cost.feltCelsius().high() > 26, cost.toString());
    }

    /** The two extremes of section 5.2: between (1 - r) times the cut and, with the warming up, little more than the cut. */
    @Test
    void delay_liesBetweenNothingAndTheCutWithItsWarmingUp() {
        var cost = cut(6, 18, 0.3);
        assertTrue(cost.hoursLater().low() > 0 && cost.hoursLater().likely() > 3, cost.toString());
        assertTrue(cost.hoursLater().high() < 18, cost.toString());
    }

    /** PSU-POWER: some live below 90 °F for up to 18 hours; expect 40 to 50 % to hatch after most power cuts. */
    @Test
    void longCut_mayCostHalf_asTheExtensionServiceSays() {
        var cost = cut(12, 20, 0.6);
        assertTrue(cost.lossLowPct() <= 50 && cost.lossHighPct() >= 50, cost.toString());
        assertTrue(!cost.rules().isEmpty());
    }

    /** AVIAN-EMBRYO-COPY: 90 °F for three to four hours only slows. */
    @Test
    void coolEvening_onlySlows() {
        var cost = cut(3, 32.2, 0.5);
        assertTrue(cost.lossHighPct() <= 15, cost.toString());
        assertTrue(cost.lossLowPct() == 0);
    }

    @Test
    void olderEmbryos_mayLoseMore_inTheCold() {
        assertTrue(cut(10, 15, 0.9).lossHighPct() > cut(10, 15, 0.1).lossHighPct());
    }

    /** ANDE1981: 43.3 °C halved the hatch in 4 to 12 hours; HEAT1976: 46.1 °C for three hours killed all. */
    @Test
    void heat_costsAsPublished() {
        var warm = new Warmth(NIGHT.minusSeconds(3600), NIGHT, 37.5);
        var six = List.of(
                warm,
                new Warmth(NIGHT, NIGHT.plusSeconds(6 * 3600), 43.3),
                new Warmth(NIGHT.plusSeconds(6 * 3600), NIGHT.plusSeconds(30 * 3600), 37.5));
        var halved = NightReckoning.of(six, Excursion.Kind.HOT, 37.5, 0.5);
        assertTrue(halved.lossLowPct() <= 50 && halved.lossHighPct() >= 50, halved.toString());
        var three = List.of(
                warm,
                new Warmth(NIGHT, NIGHT.plusSeconds(3 * 3600), 46.1),
                new Warmth(NIGHT.plusSeconds(3 * 3600), NIGHT.plusSeconds(30 * 3600), 37.5));
        assertEquals(
                100, NightReckoning.of(three, Excursion.Kind.HOT, 37.5, 0.7).lossHighPct());
    }
}
