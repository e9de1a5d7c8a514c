package eggwright.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class AirAndLengthTest {
    private static final long SEED = 20260417;
    private static final double ROUNDING = 1e-12;

    /** 29.921 inHg and 760 mmHg are one standard atmosphere, to the digits that tables print. */
    @ParameterizedTest
    @CsvSource({
        "101.325kPa, 101.325, 1e-12",
        "1013.25 hPa, 101.325, 1e-12",
        "1013.25mbar, 101.325, 1e-12",
        "29.9213inHg, 101.325, 0.0002",
        "760 mmHg, 101.325, 0.0001",
        "845 HPA, 84.5, 1e-12",
    })
    void pressure_readsBarometers(String typed, double kilopascals, double within) {
        assertEquals(kilopascals, Pressure.parse(typed).kilopascals(), within);
    }

    /** 1 mmHg = 133.322387 Pa and 1 inHg = 3386.389 Pa, as the reference sheet prints them. */
    @Test
    void pressure_agreesWithPrintedFactors() {
        assertEquals(0.133322387, Pressure.parse("1mmHg").kilopascals(), 1e-9);
        assertEquals(3.386389, Pressure.parse("1inHg").kilopascals(), 1e-6);
        assertEquals(7.50062, Pressure.parse("1kPa").torr(), 0.000005);
    }

    @ParameterizedTest
    @CsvSource({"300m, 300", "1000 ft, 304.8", "-28m, -28"})
    void altitude_readsMaps(String typed, double metres) {
        assertEquals(metres, Altitude.parse(typed).metres(), ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"45.5mm, 45.5", "4.55 cm, 45.5", "1in, 25.4"})
    void length_readsCallipers(String typed, double millimetres) {
        assertEquals(millimetres, Length.parse(typed).millimetres(), ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"50, 50", "50%, 50", "0, 0", "100 %, 100"})
    void humidity_readsWithOrWithoutItsSign(String typed, double pct) {
        assertEquals(pct, Humidity.parse(typed).pct(), ROUNDING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"101", "-1", "50C", "damp", ""})
    void humidity_isRefused_outsideItsRange(String typed) {
        assertThrows(OutOfRange.class, () -> Humidity.parse(typed));
    }

    @ParameterizedTest
    @CsvSource({
        "1013, '\"1013\" has no unit. Write 101.3kPa or 29.9inHg.'",
        "1013psi, '\"1013psi\" has a unit that is not kPa, hPa, mbar, inHg or mmHg. Write 101.3kPa or 29.9inHg.'",
        "high, '\"high\" is not a pressure. Write 101.3kPa or 29.9inHg.'",
    })
    void pressure_saysHowToWriteIt(String typed, String words) {
        assertEquals(
                words,
                assertThrows(OutOfRange.class, () -> Pressure.parse(typed)).getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"300", "300km", "12000m", "-2001m"})
    void altitude_isRefused_withoutAUnitOrOutsideTheRange(String typed) {
        assertThrows(OutOfRange.class, () -> Altitude.parse(typed));
    }

    @ParameterizedTest
    @EnumSource
    void pressure_comesBackAsTyped(Pressure.Unit unit) {
        var typed = new Pressure(29.92, unit);
        assertEquals(typed, Pressure.parse(typed.toString()));
        assertEquals(
                typed.kilopascals(), Pressure.ofKilopascals(typed.kilopascals()).kilopascals(), ROUNDING);
    }

    @Test
    void quantities_comeBackAsTyped_inAnyUnit() {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 2000; i++) {
            var mass = new Mass(random.nextDouble(0, 100), pick(random, Mass.Unit.values()));
            assertEquals(mass, Mass.parse(mass.toString()), "seed " + SEED);
            assertEquals(mass.grams(), Mass.ofGrams(mass.grams()).grams(), ROUNDING);
            var length = new Length(random.nextDouble(0.1, 30), pick(random, Length.Unit.values()));
            assertEquals(length, Length.parse(length.toString()), "seed " + SEED);
            assertEquals(length.millimetres() / 10, length.centimetres(), ROUNDING);
            var altitude = new Altitude(random.nextDouble(-500, 5000), pick(random, Altitude.Unit.values()));
            assertEquals(altitude, Altitude.parse(altitude.toString()), "seed " + SEED);
            var pressure = new Pressure(random.nextDouble(1, 1100), pick(random, Pressure.Unit.values()));
            assertEquals(pressure, Pressure.parse(pressure.toString()), "seed " + SEED);
            assertEquals(pressure.kilopascals(), pressure.hectopascals() / 10, 1e-9);
        }
    }

    private static <U> U pick(SplittableRandom random, U[] units) {
        return units[random.nextInt(units.length)];
    }

    @ParameterizedTest
    @EnumSource
    void temperature_comesBackAsTyped(Temperature.Scale scale) {
        var typed = new Temperature(310.65, scale);
        assertEquals(typed, Temperature.parse(typed.toString()));
        assertEquals(
                typed.celsius(), Temperature.ofFahrenheit(typed.fahrenheit()).celsius(), 1e-11);
        assertEquals(typed.celsius() + 273.15, typed.kelvin(), 1e-11);
    }
}
