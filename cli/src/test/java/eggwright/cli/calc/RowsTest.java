package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.Run;
import eggwright.cli.voice.Status;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RowsTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "successes,trials,level\n51,54,\n0,20,0.9\n",
                "\uFEFFsuccesses;trials;level\r\n51;54;\r\n0;20;0.9\r\n",
                "trials\tsuccesses\tlevel\n54\t51\t\n20\t0\t0.9",
            })
    void rows_answerEachAsItWouldAlone(String text) throws IOException {
        var run = interval(text);
        assertEquals(Status.DONE, run.status(), run.err());
        assertEquals(
                Run.of("calc", "interval", "--successes", "51", "--trials", "54", "--json")
                                .out()
                        + Run.of("calc", "interval", "--successes", "0", "--trials", "20", "--level", "0.9", "--json")
                                .out(),
                run.out());
    }

    @Test
    void rows_answerABadOneInItsPlace() throws IOException {
        var run = interval("successes,trials\n51,54\n60,54\nmany,54\n7\n5,54\n");
        assertEquals(Status.NO, run.status());
        var lines = run.lines();
        assertEquals(5, lines.size());
        assertEquals(
                "{\"row\":3,\"error\":\"Column \\\"successes\\\": 60 is outside 0 to 54, the trials.\"}", lines.get(1));
        assertEquals(
                "{\"row\":4,\"error\":\"Column \\\"successes\\\": \\\"many\\\" is not a whole number. "
                        + "Write it like 54.\"}",
                lines.get(2));
        assertTrue(lines.get(3).startsWith("{\"row\":5,\"error\":\"This row has 1 cells"), lines.get(3));
        assertTrue(lines.get(4).startsWith("{\"estimate\":"), lines.get(4));
        assertEquals("", run.err());
    }

    @Test
    void rows_areATable_withoutJson() throws IOException {
        var run = Run.of("calc", "interval", "--rows", file("successes,trials\n51,54\n60,54\n"));
        assertEquals(Status.NO, run.status());
        assertTrue(run.lines().get(0).startsWith("estimate      low "), run.out());
        assertTrue(run.lines().get(1).startsWith("0.944444      0.848928 "), run.out());
        assertEquals(
                "Row 3: Column \"successes\": 60 is outside 0 to 54, the trials.",
                run.lines().get(2));
    }

    @Test
    void rows_refuseAnUnknownColumnByName() throws IOException {
        var run = interval("sucesses,trials\n51,54\n");
        assertEquals(Status.WRONG_INPUT, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("\"sucesses\""), run.err());
        assertTrue(run.err().contains("Did you mean \"successes\"?"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "successes\n51\n", "trials,trials,successes\n1,1,1\n"})
    void rows_refuseAFileThatCannotBeAnswered(String text) throws IOException {
        var run = interval(text);
        assertEquals(Status.WRONG_INPUT, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("rows.csv"), run.err());
    }

    @Test
    void rows_refuseAFileThatIsNotThere() {
        var run =
                Run.of("calc", "interval", "--rows", folder.resolve("none.csv").toString());
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains("is not there"), run.err());
    }

    @Test
    void rows_refuseABinaryFile() throws IOException {
        var file = folder.resolve("picture.csv");
        Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, (byte) 0xff, (byte) 0xd8});
        var run = Run.of("calc", "interval", "--rows", file.toString());
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains("picture.csv"), run.err());
    }

    @Test
    void rows_refuseValuesTypedBeside() throws IOException {
        var run = Run.of("calc", "interval", "--trials", "54", "--rows", file("successes,trials\n51,54\n"));
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains("--trials is given too"), run.err());
    }

    @Test
    void rows_takeSpeciesToo() throws IOException {
        var run = Run.of("calc", "species", "--rows", file("species\nguinea fowl\ndodo\n"), "--json");
        assertEquals(Status.NO, run.status());
        assertTrue(run.lines().get(0).startsWith("{\"species\":\"guinea fowl\""), run.out());
        assertTrue(run.lines().get(1).startsWith("{\"row\":3,"), run.out());
    }

    private Run interval(String text) throws IOException {
        return Run.of("calc", "interval", "--rows", file(text), "--json");
    }

    private String file(String text) throws IOException {
        var file = folder.resolve("rows.csv");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        return file.toString();
    }
}
