package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import eggwright.cli.Run;
import eggwright.cli.voice.Status;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The calculator's commands of an egg. The formulas are held against published rows in the room egg. */
class EggCommandsTest {
    private static final String PHEASANTS =
            "calc loss --set-mass 32.00g --now-mass 30.80g --day 7 --transfer-day 21 --target 13 --air 37.5C --humidity 45";

    @TempDir
    Path folder;

    /** Hoyt 1979 at 45 by 36 mm: 31.9594 g, 29.7432 cm3 (EGM-010); Paganelli's surface of that mass. */
    @ParameterizedTest
    @ValueSource(strings = {"--length 45mm --breadth 36mm", "--length 4.5cm --breadth 1.41732283in"})
    void egg_isHoyts_ofAnyBird(String size) throws IOException {
        var json = json("calc egg " + size);
        assertEquals(31.9594, number(json, "mass_g"), 0.001);
        assertEquals(29.7432, number(json, "volume_cm3"), 0.001);
        assertEquals(1.0745, number(json, "density_g_per_cm3"), 0.0001);
        assertEquals(4.835 * Math.pow(31.9594, 0.662), number(json, "surface_cm2"), 0.002);
    }

    /** Asmundson and Baker 1940: 1.085 g/cm3, weighed in air and in water. */
    @Test
    void egg_hasTheDensityMeasured_ofAPheasant() throws IOException {
        var json = json("calc egg --length 45.5mm --breadth 36mm --species pheasant");
        assertEquals(1.085, number(json, "density_g_per_cm3"), 1e-9);
        assertEquals(0.51 * 4.55 * 3.6 * 3.6, number(json, "volume_cm3"), 1e-9);
        assertEquals(number(json, "volume_cm3") * 1.085, number(json, "mass_g"), 1e-9);
        assertEquals(24, number(json, "expected_period_days"), 1);
    }

    @Test
    void egg_saysWhereNothingWasMeasured() throws IOException {
        var json = json("calc egg --length 30.5mm --breadth 24.5mm --species bobwhite");
        assertTrue(json.get("density_source").textValue().contains("all birds"), json.toString());
        assertEquals(10.0326, number(json, "mass_g"), 0.001);
    }

    /** Example A of docs/models/weight-loss.md, by hand: 48.28 mg/(day kPa), 6.437 mg/(day torr). */
    @Test
    void conductance_isThatOfTheWorkedExample() throws IOException {
        var json = json("calc conductance --set-mass 32.00g --now-mass 30.80g --days 7 --air 37.5C --humidity 45");
        assertEquals(48.28, number(json, "conductance_mg_per_day_kpa"), 0.005);
        assertEquals(6.437, number(json, "conductance_mg_per_day_torr"), 0.0005);
        assertEquals(6.437, number(json, "conductance_sea_level_mg_per_day_torr"), 0.0005);
    }

    /** The same loss at 1,500 m is of a shell that would lose P/P0 = 0.8345 of it at the sea. */
    @Test
    void conductance_isLess_whenReferredToTheSea() throws IOException {
        var json = json("calc conductance --set-mass 1.1oz --now-mass 1.05oz --days 7 --air 99.5F --humidity 45"
                + " --pressure 845.56hPa --egg-temperature 100F");
        assertEquals(
                0.84556 / 1.01325,
                number(json, "conductance_sea_level_mg_per_day_torr") / number(json, "conductance_mg_per_day_torr"),
                1e-9);
        assertEquals(
                7.50062,
                number(json, "conductance_mg_per_day_kpa") / number(json, "conductance_mg_per_day_torr"),
                0.00001);
    }

    /** Example A: 32.17 %; its wet bulb by the equation at sea level. */
    @Test
    void loss_asksForTheHumidityOfTheWorkedExample() throws IOException {
        var json = json(PHEASANTS);
        assertEquals(3.75, number(json, "loss_pct"), 1e-9);
        assertEquals(11.25, number(json, "projected_loss_pct"), 1e-9);
        assertEquals(32.17, number(json, "required_humidity_pct"), 0.005);
        assertEquals(number(json, "required_humidity_pct"), number(json, "recommended_humidity_pct"), 1e-9);
        assertTrue(json.get("reachable").isBoolean() && json.get("reachable").booleanValue());
        var back = json("calc humidity --dry 37.5C --wet " + number(json, "recommended_wet_bulb_c") + "C");
        assertEquals(32.167, number(back, "relative_humidity_pct"), 0.001);
    }

    /** The set-point examples EGC-075, EGC-077 and EGC-081, the last with warmer air and eggs to come. */
    @ParameterizedTest
    @CsvSource({
        "31.20g, 29.95g, 8, 21, 13, 37.5C, 50, '', 30.929",
        "9.10g, 8.62g, 8, 20, 12, 37.5C, 55, '', 61.75",
        "60.00g, 57.30g, 8, 18, 12, 37.5C, 55, --next-air 37.7C --next-egg-temperature 37.9C, 41.737",
    })
    void loss_agreesWithWorkedSetPoints(
            String set,
            String now,
            String day,
            String transfer,
            String target,
            String air,
            String humidity,
            String next,
            double expected)
            throws IOException {
        for (var place : new String[] {"", " --altitude 2500m"}) {
            var json = json("calc loss --set-mass " + set + " --now-mass " + now + " --day " + day + " --transfer-day "
                    + transfer + " --target " + target + " --air " + air + " --humidity " + humidity + " " + next
                    + place);
            assertEquals(expected, number(json, "required_humidity_pct"), 0.05, place);
        }
    }

    @Test
    void loss_keepsTheEggsOffsetFromTheAir_whenOnlyTheAirChanges() throws IOException {
        var kept = json(PHEASANTS + " --egg-temperature 37.8C --next-air 37.2C");
        var said = json(PHEASANTS + " --egg-temperature 37.8C --next-air 37.2C --next-egg-temperature 37.5C");
        assertEquals(number(said, "required_humidity_pct"), number(kept, "required_humidity_pct"), 1e-9);
    }

    /** What is projected under the needed humidity is the target: feed the answer back. */
    @Test
    void loss_isTheTarget_underTheHumidityThatItAsksFor() throws IOException {
        var json = json(PHEASANTS + " --egg-temperature 37.6C --next-air 99.9F --altitude 1500m");
        assertEquals(13, number(json, "recommended_loss_pct"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"20, 30, drier", "6, 70, wetter", "3, 70, lost already"})
    void loss_staysInsideSafeLimits_andSaysWhy(String target, double run, String why) throws IOException {
        var json = json(PHEASANTS.replace("--target 13", "--target " + target));
        assertEquals(run, number(json, "recommended_humidity_pct"));
        assertFalse(json.get("reachable").booleanValue());
        double asked = number(json, "required_humidity_pct");
        assertTrue(asked < 30 || asked > 70, json.toString());
        assertTrue(json.get("advice").textValue().contains(why), json.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--now-mass 30.80g | --now-mass 33g | The eggs weigh more now, 33.0g, than before, 32.0g, and an egg never",
                "--now-mass 30.80g | --now-mass 3.08g | --now-mass: 3.08g is less than half of 32.0g.",
                "--now-mass 30.80g | --now-mass 32g | These eggs have lost nothing yet.",
                "--now-mass 30.80g | --now-mass 30.8 | --now-mass: \"30.8\" has no unit. Write 31.2g or 1.1oz.",
                "--target 13 | --target 0.13 | --target: 0.13 is outside 1.0 to 50.0 %.",
                "--target 13 | --target much | --target: \"much\" is not a percentage.",
                "--transfer-day 21 | --transfer-day 7 | --transfer-day: 7.0 is not after day 7.0",
                "--day 7 | --day 0 | --day: 0.0 is outside 0 to 100 days",
                "--air 37.5C | --air 99.5C | --air: 99.5C is hotter than any machine. Fahrenheit?",
                "--air 37.5C | --air 37.5F | --air: 37.5F is too cold for a machine. Celsius?",
                "--humidity 45 | --humidity 100 | The air is as wet as an egg at 37.5C is inside",
            })
    void wrongInput_isAnsweredInPlainWords(String right, String wrong, String start) {
        var run = Run.of(PHEASANTS.replace(right, wrong).split(" ", -1));
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().startsWith(start), run.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--length 36mm --breadth 45mm | The breadth, 45.0mm, is more than the length, 36.0mm.",
                "--length 45.5 --breadth 36mm | --length: \"45.5\" has no unit. Write 45.5mm or 1.79in.",
                "--length 45.5cm --breadth 36mm | Egg length 455.0 mm is outside 15.0 to 200.0 mm.",
                "--length 45.5mm --breadth 36mm --species dodo | --species:",
            })
    void egg_isRefusedInPlainWords(String size, String start) {
        var run = Run.of(("calc egg " + size).split(" ", -1));
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().startsWith(start), run.err());
    }

    @Test
    void rows_keepGoingPastATrayThatGained() throws IOException {
        var file = folder.resolve("trays.csv");
        Files.writeString(
                file,
                "set_mass,now_mass,day,transfer_day,target,air,humidity\n"
                        + "32g,30.8g,7,21,13,37.5C,45\n32g,33g,7,21,13,37.5C,45\n9.1g,8.62g,8,20,12,37.5C,55\n",
                StandardCharsets.UTF_8);
        var run = Run.of("calc", "loss", "--rows", file.toString(), "--json");
        assertEquals(Status.NO, run.status());
        var mapper = new ObjectMapper();
        assertEquals(32.17, number(mapper.readTree(run.lines().get(0)), "required_humidity_pct"), 0.005);
        assertTrue(run.lines().get(1).startsWith("{\"row\":3,\"error\":\"The eggs weigh more now"), run.out());
        assertEquals(61.75, number(mapper.readTree(run.lines().get(2)), "required_humidity_pct"), 0.005);
    }

    @Test
    void loss_readsAsATable() {
        var run = Run.of(PHEASANTS.split(" ", -1));
        assertTrue(run.out().contains("reachable                 yes"), run.out());
    }

    private static double number(JsonNode json, String key) {
        return json.get(key).doubleValue();
    }

    private static JsonNode json(String words) throws IOException {
        var run = Run.of((words + " --json").split(" +", -1));
        assertEquals(Status.DONE, run.status(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
