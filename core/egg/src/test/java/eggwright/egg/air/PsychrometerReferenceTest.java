package eggwright.egg.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.egg.Published;
import eggwright.units.Humidity;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PsychrometerReferenceTest {
    /** Tables round to 1 %RH and use Ferrel's coefficient, which rises with the wet bulb. */
    private static final double POINTS_OF_TABLES = 1.05;

    /** Chart readings of ASHRAE near 13 %RH, where the thermodynamic wet bulb is about 1 point away; the row bears 1.3. */
    private static final double POINTS_OF_CHARTS = 1.3;

    /** Adiabatic saturation is another equation, and WMO's coefficient another constant. */
    private static final double POINTS_OF_OTHER_EQUATIONS = 0.7;

    /** The same equation on IAPWS saturation, printed to 0.001 points. */
    private static final double POINTS_OF_THE_SAME = 0.05;

    /** A wet bulb that answers 0.7 points differently lies 0.16 °C away (4.4 points per degree). */
    private static final double DEGREES_OF_OTHER_EQUATIONS = 0.2;

    private static final double DEW_DEGREES = 0.05;

    /** Hyland and Wexler's saturation is 0.02 to 0.03 % lower; the rows print five figures of humidity. */
    private static final double SHARE_OF_PSYCHROLIB = 5e-4;

    static Stream<Published> tables() {
        return rows("published_table");
    }

    static Stream<Published> examples() {
        return rows("published_example", "relative_humidity_percent");
    }

    static Stream<Published> computed() {
        return Stream.concat(rows("computed_thermodynamic"), rows("computed_psychrometer_equation"));
    }

    static Stream<Published> sameEquation() {
        return rows("computed_psychrometer_equation")
                .filter(row -> row.text("method").contains("A = 6.62e-4 /K (constant)"));
    }

    static Stream<Published> inverse() {
        return rows("computed_inverse");
    }

    static Stream<Published> withHumidityRatio() {
        return rows("computed_thermodynamic", "humidity_ratio_g_per_kg");
    }

    static Stream<Published> ratioExamples() {
        return rows("published_example", "humidity_ratio_g_per_kg")
                .filter(row -> row.text("relative_humidity_percent").isEmpty());
    }

    static Stream<Published> rows(String kind, String... filled) {
        return Published.rows("psychrometer", kind, filled);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void humidity_agreesWithTheWeatherBureau(Published row) {
        assertHumidity(row, POINTS_OF_TABLES);
        // The printed dew point is rounded to 1 °F and follows the rounded humidity.
        assertEquals(
                row.number("dew_point_F"), air(row).dewPoint().orElseThrow().fahrenheit(), 1.05, row.id());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void humidity_agreesWithPrintedExamples(Published row) {
        assertHumidity(row, row.text("method").startsWith("chart") ? POINTS_OF_CHARTS : POINTS_OF_TABLES);
    }

    @ParameterizedTest
    @MethodSource("computed")
    void humidity_agreesWithOtherEquations(Published row) {
        assertHumidity(row, POINTS_OF_OTHER_EQUATIONS);
    }

    @ParameterizedTest
    @MethodSource("sameEquation")
    void humidity_isTheEquationThatItSays(Published row) {
        assertHumidity(row, POINTS_OF_THE_SAME);
        var air = air(row);
        assertEquals(row.number("vapour_pressure_hPa"), air.vapour().hectopascals(), 0.005, row.id());
        // The row's gas constant has six figures.
        assertEquals(
                row.number("absolute_humidity_g_per_m3"), air.absoluteHumidityGramsPerCubicMetre(), 0.005, row.id());
    }

    @ParameterizedTest
    @MethodSource("inverse")
    void wetBulb_agreesWithAdiabaticSaturation(Published row) {
        var air = MoistAir.of(
                Temperature.ofCelsius(row.number("dry_bulb_C")),
                new Humidity(row.number("relative_humidity_percent")),
                pressure(row));
        assertEquals(
                row.number("wet_bulb_C"),
                air.wetBulb(Ventilation.ASPIRATED).celsius(),
                DEGREES_OF_OTHER_EQUATIONS,
                row.id());
        assertEquals(row.number("dew_point_C"), air.dewPoint().orElseThrow().celsius(), DEW_DEGREES, row.id());
    }

    /** Given the humidity instead of the wet bulb, only saturation is another formula: 0.03 %. */
    @ParameterizedTest
    @MethodSource("withHumidityRatio")
    void air_holdsTheWaterOfPsychroLib(Published row) {
        var air = MoistAir.of(
                Temperature.ofCelsius(row.number("dry_bulb_C")),
                new Humidity(row.number("relative_humidity_percent")),
                pressure(row));
        assertShare(row.number("vapour_pressure_hPa"), air.vapour().hectopascals(), row.id());
        assertShare(row.number("humidity_ratio_g_per_kg"), air.humidityRatioGramsPerKilogram(), row.id());
        assertShare(row.number("absolute_humidity_g_per_m3"), air.absoluteHumidityGramsPerCubicMetre(), row.id());
        assertEquals(row.number("dew_point_C"), air.dewPoint().orElseThrow().celsius(), 0.02, row.id());
    }

    /** PSY-078 and 079: ratios by adiabatic saturation; 0.25 points of humidity, or 0.5 %, away. */
    @ParameterizedTest
    @MethodSource("ratioExamples")
    void humidityRatio_isNearAdiabaticSaturation(Published row) {
        double printed = row.number("humidity_ratio_g_per_kg");
        assertEquals(printed, air(row).humidityRatioGramsPerKilogram(), 0.005 * printed, row.id());
    }

    /** Two anchors for incubators, read in the 1897 tables: 100/86 °F is 57 %, 101/88 °F is 60 %. */
    @ParameterizedTest
    @CsvSource({"100, 86, 57", "101, 88, 60"})
    void humidity_holdsTheAnchorsOfIncubators(double dry, double wet, double printed) {
        var air = MoistAir.ofWetBulb(
                Temperature.ofFahrenheit(dry),
                Temperature.ofFahrenheit(wet),
                Pressure.SEA_LEVEL,
                Ventilation.ASPIRATED);
        assertEquals(printed, air.humidity().pct(), POINTS_OF_TABLES);
    }

    /** Sensitivities, by hand: 53.3 % at 37.5/29 °C; 4.6 points for a degree of wet bulb. */
    @Test
    void humidity_movesWithTheWetBulbAsWorkedOutByHand() {
        assertEquals(53.3, at(37.5, 29, Pressure.SEA_LEVEL, Ventilation.ASPIRATED), 0.05);
        double perDegree = at(37.5, 29.05, Pressure.SEA_LEVEL, Ventilation.ASPIRATED)
                - at(37.5, 28.95, Pressure.SEA_LEVEL, Ventilation.ASPIRATED);
        assertEquals(0.46, perDegree, 0.005);
        double per100hPa = at(37.5, 29, Pressure.ofKilopascals(111.325), Ventilation.ASPIRATED)
                - at(37.5, 29, Pressure.SEA_LEVEL, Ventilation.ASPIRATED);
        assertEquals(-0.87, per100hPa, 0.005);
    }

    /** By hand: 0.101325 x 1000 x (8.0e-4 - 6.62e-4) x 8.5 K / 6.4555 kPa is 1.84 points less. */
    @Test
    void humidity_isLess_whenTheSameReadingsComeFromStillAir() {
        double aspirated = at(37.5, 29, Pressure.SEA_LEVEL, Ventilation.ASPIRATED);
        double still = at(37.5, 29, Pressure.SEA_LEVEL, Ventilation.STILL);
        assertEquals(1.84, aspirated - still, 0.005);
        assertTrue(still < aspirated);
    }

    private static double at(double dry, double wet, Pressure barometer, Ventilation ventilation) {
        return MoistAir.ofWetBulb(Temperature.ofCelsius(dry), Temperature.ofCelsius(wet), barometer, ventilation)
                .humidity()
                .pct();
    }

    private static void assertHumidity(Published row, double points) {
        assertEquals(
                row.number("relative_humidity_percent"), air(row).humidity().pct(), points, row.id());
    }

    private static void assertShare(double printed, double ours, String id) {
        assertEquals(printed, ours, SHARE_OF_PSYCHROLIB * printed, id);
    }

    private static MoistAir air(Published row) {
        return MoistAir.ofWetBulb(
                Temperature.ofCelsius(row.number("dry_bulb_C")),
                Temperature.ofCelsius(row.number("wet_bulb_C")),
                pressure(row),
                Ventilation.ASPIRATED);
    }

    /** The 1897 printing does not name its barometer; it fits sea level. */
    private static Pressure pressure(Published row) {
        return row.text("pressure_hPa").isEmpty()
                ? Pressure.SEA_LEVEL
                : Pressure.ofKilopascals(row.number("pressure_hPa") / 10);
    }
}
