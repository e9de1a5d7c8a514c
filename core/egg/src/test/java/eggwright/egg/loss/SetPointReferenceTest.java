package eggwright.egg.loss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.egg.Published;
import eggwright.egg.air.MoistAir;
import eggwright.egg.air.Ventilation;
import eggwright.egg.shell.Diffusion;
import eggwright.units.Humidity;
import eggwright.units.Mass;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Set-points worked out elsewhere (by hand, and with python3-iapws and SciPy), from two weighings. */
class SetPointReferenceTest {
    /** What the rows bear, in points of humidity. */
    private static final double POINTS = 0.05;

    private static final double POINTS_OF_MIXED = 0.1;
    private static final double WET_BULB_DEGREES = 0.05;
    private static final double SHARE = 1e-3;

    private static final Pattern INPUTS = Pattern.compile(
            "inputs: mass ([\\d.]+) g on day 0 and ([\\d.]+) g on day (\\d+) at ([\\d.]+) C, RH (\\d+) %, egg-air offset"
                    + " \\+([\\d.]+) C; target RH at ([\\d.]+) C, offset \\+([\\d.]+) C");

    static Stream<Published> plain() {
        return Published.rows("egg_conductance", "setpoint_example");
    }

    @ParameterizedTest
    @MethodSource("plain")
    void humidity_isThatOfTheWorkedExample(Published row) {
        var inputs = INPUTS.matcher(row.text("notes"));
        assertTrue(inputs.matches(), row.text("notes"));
        var lost = new WaterLost(mass(inputs.group(1)), mass(inputs.group(2)));
        var air = MoistAir.of(celsius(inputs.group(4), "0"), humidity(inputs.group(5)), Pressure.SEA_LEVEL);
        var past = new Spell(number(inputs.group(3)), air, celsius(inputs.group(4), inputs.group(6)));
        var shell = lost.through(List.of(past), Diffusion.WITHOUT_TEMPERATURE);
        assertEquals(
                row.number("conductance_mg_per_day_per_kPa"),
                shell.milligramsPerDayKilopascal(),
                SHARE * shell.milligramsPerDayKilopascal(),
                row.id());

        var ahead = Ahead.of(
                row.number("duration_days"),
                celsius(inputs.group(7), "0"),
                celsius(inputs.group(7), inputs.group(8)),
                Pressure.SEA_LEVEL);
        var line = HumidityLine.of(lost.before(), lost.after(), shell, ahead, Diffusion.WITHOUT_TEMPERATURE);
        assertEquals(
                row.number("relative_humidity_percent"),
                line.humidityPct(row.number("mass_loss_percent")),
                POINTS,
                row.id());
    }

    /** Example A: no saturation pressure, no altitude, no conductance in (4.4); 1 - 0.55 x 1.23333. */
    @Test
    void humidity_needsNoPhysics_whenNothingChanges() {
        double ratio = ((30.80 - 0.87 * 32.00) / 14) / ((32.00 - 30.80) / 7);
        double byRatio = 100 * (1 - 0.55 * ratio);
        for (double kilopascals : List.of(101.325, 84.556, 74.7)) {
            var barometer = Pressure.ofKilopascals(kilopascals);
            var air = MoistAir.of(Temperature.ofCelsius(37.5), new Humidity(45), barometer);
            var lost = new WaterLost(Mass.ofGrams(32.00), Mass.ofGrams(30.80));
            var shell = lost.through(List.of(Spell.of(7, air)), Diffusion.OF_VAPOUR);
            var ahead = Ahead.of(14, Temperature.ofCelsius(37.5), Temperature.ofCelsius(37.5), barometer);
            var line = HumidityLine.of(lost.before(), lost.after(), shell, ahead, Diffusion.OF_VAPOUR);
            assertEquals(byRatio, line.humidityPct(13), 1e-9);
        }
        assertEquals(32.17, byRatio, 0.005);
    }

    /** Example B: altitude, storage and a fault; EGC-082. Every intermediate was worked out by hand. */
    @Test
    void humidity_isRight_atAltitudeWithStorageAndAFault() {
        var barometer = Pressure.ofKilopascals(84.556);
        var store = Spell.of(5, MoistAir.of(Temperature.ofCelsius(15), new Humidity(75), barometer));
        var main = new Spell(6, wetBulb(37.8, 29.0, barometer), Temperature.ofCelsius(37.6));
        var fault = Spell.of(1, MoistAir.of(Temperature.ofCelsius(36.9), new Humidity(60), barometer));
        assertEquals(2.4060, store.exposureKilopascalDays(Diffusion.OF_VAPOUR), 0.001);
        assertEquals(21.3887, main.exposureKilopascalDays(Diffusion.OF_VAPOUR), 0.005);
        assertEquals(2.9903, fault.exposureKilopascalDays(Diffusion.OF_VAPOUR), 0.001);

        var lost = new WaterLost(Mass.ofGrams(32.60), Mass.ofGrams(31.05));
        var shell = lost.through(List.of(store, main, fault), Diffusion.OF_VAPOUR);
        assertEquals(57.868, shell.milligramsPerDayKilopascal(), 0.02);
        assertEquals(7.715, shell.milligramsPerDayTorr(), 0.003);

        var ahead = Ahead.of(14, Temperature.ofCelsius(37.6), Temperature.ofCelsius(37.9), barometer);
        assertSetPoint(
                HumidityLine.of(lost.before(), lost.after(), shell, ahead, Diffusion.OF_VAPOUR),
                ahead,
                14,
                53.86,
                28.89);
    }

    /** EGC-084: a bobwhite tray at 500 m, four days in store. */
    @Test
    void humidity_isRight_forABobwhiteTray() {
        var barometer = Pressure.ofKilopascals(95.461);
        var store = Spell.of(4, MoistAir.of(Temperature.ofCelsius(13), new Humidity(80), barometer));
        var main = new Spell(8, wetBulb(37.7, 28.5, barometer), Temperature.ofCelsius(37.6));
        var lost = new WaterLost(Mass.ofGrams(9.25), Mass.ofGrams(8.70));
        var shell = lost.through(List.of(store, main), Diffusion.OF_VAPOUR);
        assertEquals(19.519, shell.milligramsPerDayKilopascal(), 0.01);
        var ahead = Ahead.of(12, Temperature.ofCelsius(37.5), Temperature.ofCelsius(37.7), barometer);
        assertSetPoint(
                HumidityLine.of(lost.before(), lost.after(), shell, ahead, Diffusion.OF_VAPOUR),
                ahead,
                13,
                60.455,
                30.419);
    }

    /** The error of example A, by hand: 2.2 points from the scale, 2.5 from the reading, together 3.3. */
    @Test
    void error_isThatWorkedOutByHand() {
        var air = MoistAir.of(Temperature.ofCelsius(37.5), new Humidity(45), Pressure.SEA_LEVEL);
        var past = List.of(Spell.of(7, air));
        var ahead = Ahead.of(14, Temperature.ofCelsius(37.5), Temperature.ofCelsius(37.5), Pressure.SEA_LEVEL);
        var everyEgg = ShellSample.ofAll(54);
        assertEquals(2.2, points(new HumidityError(0.02, 0, 0, 0, everyEgg), past, ahead), 0.05);
        assertEquals(2.5, points(new HumidityError(0, 2, 0, 0, everyEgg), past, ahead), 0.05);
        assertEquals(3.3, points(new HumidityError(0.02, 2, 0, 0, everyEgg), past, ahead), 0.05);
        // 0.15/sqrt(25) of 1 - RH2 = 0.678; and 0.1 day on 7 past and 14 to come.
        assertEquals(
                2.035,
                points(new HumidityError(0, 0, 0, 0, new ShellSample(25, Integer.MAX_VALUE)), past, ahead),
                0.005);
        assertEquals(1.453, points(new HumidityError(0, 0, 0, 0.1, everyEgg), past, ahead), 0.005);
    }

    /** The formula is a first-order one: moving the inputs a little moves the answer as it says. */
    @Test
    void error_isTheSlopeOfTheAnswer_alsoWithAWarmEggAndAHatcherStage() {
        var air = MoistAir.of(Temperature.ofCelsius(37.5), new Humidity(45), Pressure.SEA_LEVEL);
        var hatcher = Spell.of(3, MoistAir.of(Temperature.ofCelsius(37.2), new Humidity(70), Pressure.SEA_LEVEL));
        var past = List.of(new Spell(7, air, Temperature.ofCelsius(37.4)));
        var ahead = new Ahead(
                14, Temperature.ofCelsius(37.5), Temperature.ofCelsius(37.8), Pressure.SEA_LEVEL, List.of(hatcher));
        double bySet = (needed(32.001, 30.80, 45, ahead) - needed(31.999, 30.80, 45, ahead)) / 0.002;
        double byNow = (needed(32.00, 30.801, 45, ahead) - needed(32.00, 30.799, 45, ahead)) / 0.002;
        double byReading = (needed(32.00, 30.80, 45.01, ahead) - needed(32.00, 30.80, 44.99, ahead)) / 0.02;
        var everyEgg = ShellSample.ofAll(54);
        assertEquals(
                0.02 * Math.hypot(bySet, byNow), points(new HumidityError(0.02, 0, 0, 0, everyEgg), past, ahead), 1e-3);
        assertEquals(2 * Math.abs(byReading), points(new HumidityError(0, 2, 0, 0, everyEgg), past, ahead), 1e-3);
    }

    private static double needed(double set, double now, double humidity, Ahead ahead) {
        var air = MoistAir.of(Temperature.ofCelsius(37.5), new Humidity(humidity), Pressure.SEA_LEVEL);
        var past = List.of(new Spell(7, air, Temperature.ofCelsius(37.4)));
        var lost = new WaterLost(Mass.ofGrams(set), Mass.ofGrams(now));
        var shell = lost.through(past, Diffusion.OF_VAPOUR);
        return HumidityLine.of(lost.before(), lost.after(), shell, ahead, Diffusion.OF_VAPOUR)
                .humidityPct(13);
    }

    private static double points(HumidityError error, List<Spell> past, Ahead ahead) {
        return error.points(Mass.ofGrams(32.00), Mass.ofGrams(30.80), 13, past, ahead, Diffusion.OF_VAPOUR);
    }

    private static void assertSetPoint(HumidityLine line, Ahead ahead, double target, double humidity, double wet) {
        double needed = line.humidityPct(target);
        assertEquals(humidity, needed, POINTS_OF_MIXED);
        assertEquals(
                wet,
                ahead.at(new Humidity(needed)).wetBulb(Ventilation.ASPIRATED).celsius(),
                WET_BULB_DEGREES);
    }

    private static MoistAir wetBulb(double dry, double wet, Pressure barometer) {
        return MoistAir.ofWetBulb(
                Temperature.ofCelsius(dry), Temperature.ofCelsius(wet), barometer, Ventilation.ASPIRATED);
    }

    private static Temperature celsius(String air, String offset) {
        return Temperature.ofCelsius(number(air) + number(offset));
    }

    private static Mass mass(String grams) {
        return Mass.ofGrams(number(grams));
    }

    private static Humidity humidity(String pct) {
        return new Humidity(number(pct));
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
