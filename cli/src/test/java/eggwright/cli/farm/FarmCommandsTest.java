package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.Main;
import eggwright.store.DataFolder;
import eggwright.store.DeviceRow;
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
        assertEquals(0, run("today", "--at", "2027-05-03T12:00-05:00", "--json", "--data", data));
        assertTrue(said().contains("\"kind\":\"candle\""), said());
        assertEquals(0, run("today", "--at", "2027-05-03T12:00-05:00", "--data", data));
        assertTrue(said().contains("Candle set "), said());
        assertEquals(0, run("export", "--data", data));
        assertTrue(said().lines().count() > 1000);
        var stick = folder.resolve("stick").toString();
        assertEquals(0, run("backup", stick, "--data", data));
        assertEquals(0, run("restore", stick, "--data", folder.resolve("again").toString()));
        assertEquals(
                0, run("verify", "--json", "--data", folder.resolve("again").toString()));
        assertTrue(said().contains("\"whole\":\"yes\""), said());
    }

    /** Decision 0084: a phone that was let go after the backup is not in again after the restore. */
    @Test
    void restoredBook_letsNoDeviceIn_andSaysSo() {
        var data = folder.resolve("joined");
        var joined = java.time.Instant.now();
        try (var store = DataFolder.at(data).write()) {
            store.devices()
                    .keep(new DeviceRow(
                            "d1",
                            "Wren’s phone",
                            "hand",
                            "code",
                            "a".repeat(64),
                            joined,
                            joined,
                            joined.plusSeconds(86400),
                            null));
        }
        var stick = folder.resolve("joined.eggwright").toString();
        assertEquals(0, run("backup", stick, "--data", data.toString()));
        var again = folder.resolve("joined-again");
        assertEquals(0, run("restore", stick, "--data", again.toString()));
        assertTrue(
                err.toString(StandardCharsets.UTF_8).contains("It knows 1: each joins again with a code"),
                err.toString(StandardCharsets.UTF_8));
        try (var store = DataFolder.at(again).read()) {
            assertTrue(store.devices().all().getFirst().letGo() != null);
        }
    }

    @Test
    void folderWithoutABook_isRefused_withWhatToDo() {
        assertEquals(2, run("report", "--data", folder.resolve("none").toString()));
        assertTrue(
                err.toString(StandardCharsets.UTF_8).contains("There is no book in"),
                err.toString(StandardCharsets.UTF_8));
        assertEquals("", said());
    }

    /**
     * Gonzalez-Redondo and others, red-legged partridge, hatch-phase temperature trial (Brazilian J Poultry Science, about
     * 2014; counts derived from the printed percentages): 150 set, 74.7 % fertile, 85.7 % of fertile hatched.
     */
    @Test
    void publishedTrial_isImported_andGivesThePublishedPercentages() throws Exception {
        var file = folder.resolve("trial.csv");
        java.nio.file.Files.writeString(file, """
                set,set_on,species,tray,eggs,candled_on,clear,transferred_on,transferred,hatched_on,saleable
                1,2013-05-06,red-legged partridge,1,150,2013-05-13,38,2013-05-26,112,2013-05-30,96
                """);
        var data = folder.resolve("trial").toString();
        assertEquals(0, run("import", "season", file.toString(), "--data", data), err.toString(StandardCharsets.UTF_8));
        assertEquals(0, run("import", "season", file.toString(), "--data", data), "the same file again adds nothing");
        assertEquals(0, run("report", "--by", "set", "--json", "--data", data));
        assertTrue(said().contains("\"fertility\":{\"successes\":112,\"trials\":150,\"estimate_pct\":74.6"), said());
        assertTrue(
                said().contains("\"hatch_of_fertile\":{\"successes\":96,\"trials\":112,\"estimate_pct\":85.7"), said());
    }

    @Test
    void badRow_isNamed_andNothingIsWritten() throws Exception {
        var file = folder.resolve("bad.csv");
        java.nio.file.Files.writeString(file, "set,set_on,species,tray,eggs\n1,2027-04-05,phesant,7,12.5\n");
        var data = folder.resolve("bad").toString();
        assertEquals(2, run("import", "season", file.toString(), "--data", data));
        var message = err.toString(StandardCharsets.UTF_8);
        assertTrue(message.contains("row 2") && message.contains("pheasant"), message);
        assertFalse(java.nio.file.Files.exists(Path.of(data)), "no folder is made for a file that is refused");
    }

    /** What a phone saved because its desk was gone: into a new folder, and again, and with a line that is none. */
    @Test
    void phonesFile_isImported_onceHoweverOften_andWholeOrNotAtAll() throws Exception {
        var entry = """
                {"id":"01976b2e-7c00-7000-8000-000000000001","farm":"f-1","kind":"looked","happened":"2027-04-13T19:00-05:00",\
                "noted":"2027-04-13T19:00-05:00","who":"Wren","device":"phone","origin":"noted","payload_version":3,\
                "payload":{"scope":{"set":"14","tray":"7"},"findings":[],"removed_unsorted":0}}
                """;
        var file = folder.resolve("lamp.jsonl");
        java.nio.file.Files.writeString(file, entry);
        var data = folder.resolve("new").toString();
        assertEquals(0, run("import", "lamp", file.toString(), "--json", "--data", data));
        assertEquals("{\"new_entries\":1,\"known_entries\":0}", said().strip());
        assertEquals(0, run("import", "lamp", file.toString(), "--json", "--data", data));
        assertEquals("{\"new_entries\":0,\"known_entries\":1}", said().strip());

        java.nio.file.Files.writeString(file, entry.replace("000001", "000002") + "torn off her");
        assertEquals(2, run("import", "lamp", file.toString(), "--data", data));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("line 2"), err.toString(StandardCharsets.UTF_8));
        assertEquals(0, run("export", "--data", data));
        assertEquals(1, said().lines().filter(l -> l.contains("\"looked\"")).count());
    }

    @Test
    void unknownDimension_isRefused() {
        assertEquals(2, run("report", "--by", "colour", "--data", folder.toString()));
    }
}
