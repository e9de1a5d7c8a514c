package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.Main;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClimateCommandTest {
    private static final String MIDSEASON = "2027-05-20T12:00-05:00";

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... words) {
        out.reset();
        err.reset();
        return Main.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                words);
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void setterOfTheInventedFarm_isAdvised_andNightsAreTold() {
        var data = folder.toString();
        assertEquals(0, run("simulate", "--seed", "7", "--out", data));
        assertEquals(0, run("climate", "--machine", "Setter", "--at", MIDSEASON, "--json", "--data", data));
        assertTrue(said().contains("\"machine\":\"Setter\""), said());
        assertTrue(said().contains("\"recommended_wet_bulb_f\""), said());
        assertTrue(said().contains("\"dial\":{\"step\":\"turn\",\"relative_humidity_pct\":"), said());
        assertTrue(said().contains("\"first_pip\":{\"early\""), said());
        assertEquals(0, run("climate", "--machine", "Setter", "--at", MIDSEASON, "--data", data));
    }

    @Test
    void heightOfTheFarm_movesTheWetBulb() {
        var data = folder.toString();
        run("simulate", "--seed", "7", "--out", data);
        run("climate", "--machine", "Setter", "--at", MIDSEASON, "--json", "--data", data);
        var low = said();
        assertEquals(
                0,
                run(
                        "climate",
                        "--machine",
                        "Setter",
                        "--at",
                        MIDSEASON,
                        "--altitude",
                        "1500m",
                        "--json",
                        "--data",
                        data));
        assertTrue(said().contains("\"pressure_kpa\":84.5"), said());
        assertTrue(!said().equals(low));
    }

    @Test
    void machineThatIsNotThere_isNamed() {
        var data = folder.toString();
        run("simulate", "--seed", "7", "--out", data);
        assertEquals(2, run("climate", "--machine", "Seter", "--data", data));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("Is it \"Setter\"?"), err::toString);
        assertEquals(2, run("climate", "--machine", "Setter", "--altitude", "300", "--data", data));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("has no unit"), err::toString);
    }
}
