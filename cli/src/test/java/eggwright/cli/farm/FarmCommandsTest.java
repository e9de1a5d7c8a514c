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

class FarmCommandsTest {
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
    void simulatedBook_isReported_forecast_exported_backedUp_andVerified() {
        var data = folder.resolve("season").toString();
        assertEquals(0, run("simulate", "--seed", "7", "--out", data));
        assertEquals(0, run("report", "--by", "pen", "--json", "--data", data));
        assertTrue(said().contains("\"hatch_of_fertile\""), said());
        assertEquals(0, run("forecast", "--as-of", "2027-05-03T12:00-05:00", "--json", "--data", data));
        assertTrue(said().contains("\"low_80\""), said());
        assertEquals(0, run("export", "--data", data));
        assertTrue(said().lines().count() > 1000);
        var stick = folder.resolve("stick").toString();
        assertEquals(0, run("backup", stick, "--data", data));
        assertEquals(0, run("restore", stick, "--data", folder.resolve("again").toString()));
        assertEquals(
                0, run("verify", "--json", "--data", folder.resolve("again").toString()));
        assertTrue(said().contains("\"whole\":\"yes\""), said());
    }

    @Test
    void folderWithoutABook_isRefused_withWhatToDo() {
        assertEquals(2, run("report", "--data", folder.resolve("none").toString()));
        assertTrue(
                err.toString(StandardCharsets.UTF_8).contains("There is no book in"),
                err.toString(StandardCharsets.UTF_8));
        assertEquals("", said());
    }

    @Test
    void unknownDimension_isRefused() {
        assertEquals(2, run("report", "--by", "colour", "--data", folder.toString()));
    }
}
