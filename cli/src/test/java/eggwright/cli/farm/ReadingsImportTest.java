package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.Main;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsImportTest {
    private static final String NIGHT = """
            Time,T1,RH
            2026-04-05 22:00,99.5,55
            2026-04-05 22:10,99.6,54
            2026-04-05 22:20,185.0,54
            2026-04-05 23:50,99.4,
            """;

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private String data = "";
    private String file = "";

    @BeforeEach
    void nightInAFile() throws IOException {
        data = folder.resolve("farm").toString();
        file = write("night.csv", NIGHT);
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private int run(String... words) {
        out.reset();
        err.reset();
        return Main.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                words);
    }

    private int read(String file, String... more) {
        var words = new java.util.ArrayList<>(java.util.List.of("import", "readings", file, "--data", data, "--json"));
        words.addAll(java.util.List.of(more));
        return run(words.toArray(String[]::new));
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complained() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void night_isTaken_andWhatIsOddIsCounted() {
        assertEquals(0, read(file, "--machine", "Setter 1", "--zone", "UTC"), complained());
        assertEquals(
                "{\"rows\":4,\"new_readings\":7,\"known_readings\":0,\"empty_cells\":1,\"held_back\":1,\"gaps\":1,"
                        + "\"first_at\":\"2026-04-05T22:00:00Z\",\"last_at\":\"2026-04-05T23:50:00Z\","
                        + "\"columns\":\"Time=time,T1=air_temperature_f,RH=humidity_pct\"}",
                said().strip());
        assertTrue(complained().contains("so they are taken for °F"), complained());
    }

    @Test
    void sameFileAgain_addsNothing() {
        read(file, "--machine", "Setter 1", "--zone", "UTC");
        assertEquals(0, read(file, "--machine", "Setter 1", "--zone", "UTC"));
        assertTrue(said().contains("\"new_readings\":0,\"known_readings\":7"), said());
    }

    @Test
    void whatColumnsHold_isRemembered_forTheNextFileOfThatHeader() throws IOException {
        assertEquals(
                0,
                read(
                        write("one.csv", "When,A\n2026-04-05 22:00,99.5\n"),
                        "--machine",
                        "S",
                        "--columns",
                        "When=time,A=wet_bulb_f"));
        assertEquals(0, read(write("two.csv", "When,A\n2026-04-06 22:00,86.5\n"), "--machine", "S"));
        assertTrue(said().contains("\"columns\":\"When=time,A=wet_bulb_f\""), said());
    }

    /** The farm's own time is that of Chicago; a logger that keeps UTC is said to do so once. */
    @Test
    void clockOfTheLogger_isRemembered_forTheNextFileOfThatHeader() throws IOException {
        assertEquals(0, run("simulate", "--seed", "7", "--out", data));
        var noon = write("noon.csv", "Time,T5\n2026-04-05 12:00,99.5\n");
        assertEquals(0, read(noon, "--machine", "Setter"), complained());
        assertTrue(!said().contains("\"first_at\":\"2026-04-05T12:00:00Z\""), "the farm's zone: " + said());
        var utc = write("utc.csv", "Time,T6\n2026-04-05 12:00,99.5\n");
        assertEquals(0, read(utc, "--machine", "Setter", "--zone", "UTC"));
        assertEquals(0, read(write("next.csv", "Time,T6\n2026-04-06 12:00,99.5\n"), "--machine", "Setter"));
        assertTrue(said().contains("\"first_at\":\"2026-04-06T12:00:00Z\""), said());
    }

    @Test
    void machine_isAskedFor_andAMistypedOneNamed() {
        assertEquals(2, read(file));
        assertTrue(complained().contains("Still needed: --machine"), complained());
        assertEquals(0, run("simulate", "--seed", "7", "--out", data));
        assertEquals(2, read(file, "--machine", "Seter"));
        assertTrue(complained().contains("Is it \"Setter\"?"), complained());
    }

    @Test
    void fileThatCannotBeRead_makesNoFolder() throws IOException {
        assertEquals(2, read(write("bad.csv", "Time,T °C\n2026-04-05 22:00,99.5\n"), "--machine", "S"));
        assertTrue(complained().contains("is it Fahrenheit"), complained());
        assertFalse(Files.exists(Path.of(data)));
    }

    @Test
    void rowThatIsWrong_isNamed_andNothingIsKept() throws IOException {
        assertEquals(2, read(write("bad.csv", NIGHT + "2026-04-06 00:00,warm,55\n"), "--machine", "S"));
        assertTrue(complained().contains("row 6, column \"T1\": \"warm\" is not a number"), complained());
        assertEquals(0, read(file, "--machine", "S", "--zone", "UTC"));
        assertTrue(said().contains("\"new_readings\":7"), said());
    }

    @Test
    void look_onlySaysHowTheFileWouldBeRead() {
        assertEquals(0, run("import", "readings", file, "--look", "--json", "--data", data));
        assertTrue(said().contains("T1=air_temperature_f"), said());
        assertFalse(Files.exists(Path.of(data)));
    }
}
