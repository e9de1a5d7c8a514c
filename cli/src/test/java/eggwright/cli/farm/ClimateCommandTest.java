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

    /** A night of a logger, held against a reference: both come out, and go into another folder with the book. */
    @Test
    void sensors_areTold_withWhatIsHeldBack_andWhatWasSaidOfThem() throws IOException {
        var data = folder.resolve("farm").toString();
        var season = Files.writeString(
                folder.resolve("season.csv"),
                "set,set_on,species,machine,tray,eggs\n26-1,2026-03-30,pheasant,Setter,7,54\n");
        assertEquals(0, run("import", "season", season.toString(), "--data", data));
        var night = Files.writeString(folder.resolve("night.csv"), """
                Time,T1
                2026-04-05 10:00,99.0
                2026-04-05 10:10,185.0
                2026-04-05 10:20,99.1
                """);
        assertEquals(
                0,
                run("import", "readings", night.toString(), "--machine", "Setter", "--zone", "UTC", "--data", data),
                () -> err.toString(StandardCharsets.UTF_8));
        run("climate", "--machine", "Setter", "--at", "2026-04-05T12:00Z", "--json", "--data", data);
        assertTrue(
                said().contains(
                                "\"sensors\":[{\"sensor\":\"logger\",\"quantity\":\"air_temperature\",\"unit\":\"f\","
                                        + "\"first_at\":\"2026-04-05T10:00:00Z\",\"last_at\":\"2026-04-05T10:20:00Z\",\"last_read_f\":99.1,"),
                said());
        assertTrue(
                said().contains(
                                "\"held_count\":1,\"held\":[{\"why\":\"impossible\",\"from\":\"2026-04-05T10:10:00Z\","
                                        + "\"to\":\"2026-04-05T10:10:00Z\",\"readings\":1,\"least_f\":185.0,\"most_f\":185.0}],\"findings\":[]"),
                said());
        assertFalse(said().contains("\"offset_c\""), said());

        run("export", "--data", data);
        var book = said();
        var farm = book.substring(book.indexOf("\"farm\":\"") + 8, book.indexOf("\",\"kind\""));
        var entry = "{\"received\":\"2026-04-05T11:00:00Z\",\"clock_offset_ms\":0,\"entry\":"
                + "{\"id\":\"01976b2e-7c00-7000-8000-000000000001\",\"farm\":\"" + farm
                + "\",\"kind\":\"sensor-compared\","
                + "\"happened\":\"2026-04-05T10:15Z\",\"noted\":\"2026-04-05T10:15Z\",\"who\":\"Wren\",\"device\":\"desk\","
                + "\"origin\":\"noted\",\"payload_version\":1,\"payload\":{\"sensor\":{\"place\":\"in_machine\","
                + "\"machine\":\"Setter\",\"sensor\":\"logger\",\"quantity\":\"air_temperature\"},\"showed\":\"99.1F\","
                + "\"reference\":\"100.0F\",\"by\":\"ice\"}}}\n";
        var lines = Files.writeString(folder.resolve("book.jsonl"), book + entry);
        assertEquals(
                0, run("import", "book", lines.toString(), "--data", data), () -> err.toString(StandardCharsets.UTF_8));
        run("climate", "--machine", "Setter", "--at", "2026-04-05T12:00Z", "--json", "--data", data);
        assertTrue(said().contains("\"offset_c\":0.5"), said());
        assertTrue(said().contains("\"offset_from\":\"2026-04-05T10:15:00Z\""), said());
        run("export", "--table", "sensor-notes", "--data", data);
        assertTrue(said().contains("compared,in_machine,Setter,logger,air_temperature,99.1F,100.0F,,0.5"), said());
        run("export", "--data", data);
        assertTrue(said().contains(entry.strip().substring(entry.indexOf("{\"id\""), entry.length() - 3)), said());
    }
}
