package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import eggwright.cli.Run;
import eggwright.cli.voice.Status;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The calculator's commands of air. The formulas are held against published tables in the room egg. */
class AirCommandsTest {
    @TempDir
    Path folder;

    /** 99.5/86 °F in a pheasant's setter: 58.24 % by the thermodynamic wet bulb (PsychroLib 2.5.0); 0.7 points for the equation. */
    @Test
    void humidity_answersWhatTwoThermometersSay() throws IOException {
        var json = json("calc humidity --dry 99.5F --wet 86F");
        assertEquals(
                List.of(
                        "relative_humidity_pct",
                        "vapour_pressure_kpa",
                        "dew_point_c",
                        "absolute_humidity_g_per_m3",
                        "pressure_kpa",
                        "dew_point_f"),
                keys(json));
        assertEquals(58.24, number(json, "relative_humidity_pct"), 0.7);
        assertEquals(101.325, number(json, "pressure_kpa"));
        assertEquals(number(json, "dew_point_c") * 1.8 + 32, number(json, "dew_point_f"), 1e-9);
    }

    /** 37.5/29 °C: 53.273 % at sea level, 54.734 % at 845.56 hPa (the equation with IAPWS saturation, python3-iapws). */
    @ParameterizedTest
    @CsvSource({
        "'', 53.273",
        "--pressure 1013.25hPa, 53.273",
        "--pressure 760mmHg, 53.273",
        "--pressure 29.921inHg, 53.273",
        "--pressure 845.56mbar, 54.734",
        "--altitude 1500.354m, 54.734",
        "--altitude 4922.42ft, 54.734",
    })
    void humidity_knowsThePressureInAnyUnit(String place, double expected) throws IOException {
        var json = json("calc humidity --dry 37.5C --wet 302.15K " + place);
        assertEquals(expected, number(json, "relative_humidity_pct"), 0.01);
    }

    @Test
    void humidity_isLess_fromAWickInStillAir() throws IOException {
        double fan = number(json("calc humidity --dry 37.5C --wet 29C"), "relative_humidity_pct");
        double still = number(json("calc humidity --dry 37.5C --wet 29C --still"), "relative_humidity_pct");
        // 1.84 points, by hand in PsychrometerReferenceTest.
        assertEquals(1.84, fan - still, 0.005);
    }

    @Test
    void humidityAndWetBulb_invertEachOther() throws IOException {
        for (var place : List.of("", "--altitude 2500m", "--altitude -28m", "--still --pressure 29.1inHg")) {
            double pct = number(json("calc humidity --dry 100F --wet 85F " + place), "relative_humidity_pct");
            var back = json("calc wet-bulb --dry 100F --humidity " + pct + " " + place);
            assertEquals(List.of("wet_bulb_c", "wet_bulb_f"), keys(back));
            assertEquals(85, number(back, "wet_bulb_f"), 1e-8, place);
        }
    }

    @Test
    void dewPoint_isNotSaid_ofAirWithoutWater() throws IOException {
        // A wet bulb that leaves next to nothing: found by asking for the wet bulb of 0 %.
        double wet = number(json("calc wet-bulb --dry 37.5C --humidity 0"), "wet_bulb_c");
        var json = json("calc humidity --dry 37.5C --wet " + (wet + 1e-9) + "C");
        assertTrue(json.get("dew_point_c").isNull(), json.toString());
    }

    /** NIST/IAPWS steam table: 5629 Pa at 35 °C, 7385 Pa at 40 °C. */
    @ParameterizedTest
    @CsvSource({"35C, 5.629", "95F, 5.629", "40C, 7.385", "313.15K, 7.385"})
    void saturation_isThatOfTheSteamTable(String temperature, double kilopascals) throws IOException {
        var json = json("calc saturation --temperature " + temperature);
        assertEquals(List.of("saturation_vapour_pressure_kpa"), keys(json));
        assertEquals(kilopascals, number(json, "saturation_vapour_pressure_kpa"), 0.001 * kilopascals);
    }

    /** ISO 2533:1975, Table 5, geometric heights. */
    @ParameterizedTest
    @CsvSource({"500m, 95.4613, 11.750", "2000m, 79.5014, 2.004", "9842.52ft, 70.1211, -4.491", "0ft, 101.325, 15"})
    void atmosphere_isThatOfTheStandard(String altitude, double kilopascals, double celsius) throws IOException {
        var json = json("calc atmosphere --altitude " + altitude);
        assertEquals(List.of("pressure_kpa", "temperature_c"), keys(json));
        assertEquals(kilopascals, number(json, "pressure_kpa"), 1e-4 * kilopascals);
        assertEquals(celsius, number(json, "temperature_c"), 0.001);
    }

    @Test
    void atmosphere_isDenser_belowTheSea() throws IOException {
        assertTrue(number(json("calc atmosphere --altitude -28m"), "pressure_kpa") > 101.6);
    }

    /** 55 °F eggs in a room of 75 °F sweat from 50 % on: a table worked out with another formula, in whole percents. */
    @ParameterizedTest
    @CsvSource({"48, false", "52, true"})
    void sweating_beginsWhereTheTableSays(String humidity, boolean sweats) throws IOException {
        var json = json("calc sweating --egg-temperature 55F --air 75F --humidity " + humidity);
        assertEquals(sweats, json.get("sweats").booleanValue());
        assertEquals(50, number(json, "safe_humidity_pct"), 0.6);
        assertEquals(sweats, number(json, "safe_egg_temperature_f") > 55);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "humidity --dry 99.5C --wet 86F | --dry: 99.5C is hotter than any machine. Fahrenheit? Then write 99.5F,"
                        + " which is 37.5C.",
                "humidity --dry 99.5F --wet 86C | --wet: 86.0C is hotter than any machine. Fahrenheit? Then write 86.0F,"
                        + " which is 30.0C.",
                "humidity --dry 99.5 --wet 86F | --dry: \"99.5\" has no unit. Write 99.5F or 37.5C.",
                "humidity --dry 86F --wet 99.5F | The wet bulb, 99.5F, is above the dry bulb, 86.0F.",
                "humidity --dry 37.5C --wet 5C | No air at 37.5C can show a wet bulb of 5.0C",
                "humidity --dry 99.5F | --wet is still needed.",
                "wet-bulb --dry 37.5C --humidity 101 | --humidity: Relative humidity 101.0 % is outside 0.0 to 100.0 %.",
                "wet-bulb --dry 37.5C --humidity -1 | --humidity: Relative humidity -1.0 % is outside",
                "wet-bulb --dry 37.5C --humidity 55F | --humidity: \"55F\" has a unit that is not %.",
                "wet-bulb --dry 37.5C --humidity NaN | --humidity: \"NaN\" is not a humidity.",
                "wet-bulb --dry 37.5C --humidity 55 --altitude 300m --pressure 98kPa | --pressure: an altitude is given too.",
                "wet-bulb --dry 37.5C --humidity 55 --altitude 300 | --altitude: \"300\" has no unit. Write 300m or 984ft.",
                "wet-bulb --dry 37.5C --humidity 55 --pressure 1001kPa | --pressure: 1001.0kPa is 1001.0 kPa, and no farm has",
                "wet-bulb --dry 37.5C --humidity 55 --pressure 1001 | --pressure: \"1001\" has no unit.",
                "saturation --temperature 200F | --temperature: 200.0F is outside 0.0C to 60.0C (32F to 140F)",
                "atmosphere --altitude 90000m | --altitude: Altitude 90000.0 m is outside -2000.0 to 11000.0 m.",
            })
    void wrongInput_isAnsweredInPlainWords(String words, String start) {
        var run = Run.of(("calc " + words + " --json").split(" +", -1));
        assertEquals(Status.WRONG_INPUT, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith(start), run.err());
    }

    @Test
    void rows_sayYesOrNoWhereTheCommandSaysStill() throws IOException {
        var file = folder.resolve("rows.csv");
        Files.writeString(
                file,
                "dry,wet,still,altitude\n37.5C,29C,,\n37.5C,29C,yes,\n99.5C,86F,no,300m\n37.5C,29C,perhaps,\n"
                        + "37.5C,29C,no,1500m\n",
                StandardCharsets.UTF_8);
        var run = Run.of("calc", "humidity", "--rows", file.toString(), "--json");
        assertEquals(Status.NO, run.status());
        assertEquals(
                List.of(
                        Run.of("calc humidity --dry 37.5C --wet 29C --json".split(" ", -1))
                                .out()
                                .strip(),
                        Run.of("calc humidity --dry 37.5C --wet 29C --still --json".split(" ", -1))
                                .out()
                                .strip(),
                        "{\"row\":4,\"error\":\"Column \\\"dry\\\": 99.5C is hotter than any machine. Fahrenheit? Then write"
                                + " 99.5F, which is 37.5C.\"}",
                        "{\"row\":5,\"error\":\"Column \\\"still\\\": \\\"perhaps\\\" is not yes or no. Write it like yes.\"}",
                        Run.of("calc humidity --dry 37.5C --wet 29C --altitude 1500m --json".split(" ", -1))
                                .out()
                                .strip()),
                run.lines());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"humidity", "wet-bulb", "saturation", "atmosphere", "sweating", "egg", "conductance", "loss"})
    void help_showsAnExampleThatRuns(String name) {
        var help = Run.of("calc", name, "--help");
        assertEquals(Status.DONE, help.status());
        var example = help.out().substring(help.out().indexOf("Example: eggwright ") + "Example: eggwright ".length());
        var words = new ArrayList<>(Arrays.asList(example.strip().split("\\s+", -1)));
        words.add("--json");
        var run = Run.of(words.toArray(String[]::new));
        assertEquals(Status.DONE, run.status(), run.err());
    }

    private static List<String> keys(JsonNode json) {
        var keys = new ArrayList<String>();
        json.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static double number(JsonNode json, String key) {
        return json.get(key).doubleValue();
    }

    private static JsonNode json(String words) throws IOException {
        var run = Run.of((words.strip() + " --json").split(" +", -1));
        assertEquals(Status.DONE, run.status(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
