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
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixedModelCommandTest {
    /** Crowder 1978, Appl. Stat. 27:34: seeds that germinated, by kind and by root extract. */
    private static final String SEEDS = """
            plate,seed,extract,x1,x2,r,n
            P01,O75,bean,0,0,10,39
            P02,O75,bean,0,0,23,62
            P03,O75,bean,0,0,23,81
            P04,O75,bean,0,0,26,51
            P05,O75,bean,0,0,17,39
            P06,O75,cucumber,0,1,5,6
            P07,O75,cucumber,0,1,53,74
            P08,O75,cucumber,0,1,55,72
            P09,O75,cucumber,0,1,32,51
            P10,O75,cucumber,0,1,46,79
            P11,O75,cucumber,0,1,10,13
            P12,O73,bean,1,0,8,16
            P13,O73,bean,1,0,10,30
            P14,O73,bean,1,0,8,28
            P15,O73,bean,1,0,23,45
            P16,O73,bean,1,0,0,4
            P17,O73,cucumber,1,1,3,12
            P18,O73,cucumber,1,1,22,41
            P19,O73,cucumber,1,1,15,30
            P20,O73,cucumber,1,1,32,51
            P21,O73,cucumber,1,1,3,7
            """;

    /** lme4 1.1-31 and glmmTMB 1.1.5 agree to 1e-5 here; see core/stats. */
    private static final double AS_R = 1e-4;

    @TempDir
    Path folder;

    @Test
    void model_answersThePublishedPlates() throws IOException {
        var json = json(model(SEEDS, "--fixed", "x1,x2", "--interaction", "x1,x2", "--random", "plate", "--json"));
        assertEquals(
                List.of("fixed", "random", "log_likelihood", "rows", "iterations", "converged", "singular"),
                names(json));
        assertEquals(
                List.of("term", "estimate", "standard_error", "z", "p"),
                names(json.get("fixed").get(0)));
        assertTerm(json, 0, "intercept", -0.548491645115006, 0.166108003856707);
        assertTerm(json, 1, "x1", 0.0974261590635411, 0.2773890543891);
        assertTerm(json, 2, "x2", 1.33680869839109, 0.236230230487917);
        assertTerm(json, 3, "x1 by x2", -0.81002920519427, 0.38422082797415);
        assertEquals(-2.10823866437758, json.get("fixed").get(3).get("z").doubleValue(), 1e-3);
        assertEquals(0.03501, json.get("fixed").get(3).get("p").doubleValue(), 1e-4);
        var plates = json.get("random").get(0);
        assertEquals(List.of("group", "standard_deviation", "levels"), names(plates));
        assertEquals("plate", plates.get("group").textValue());
        assertEquals(0.23458395611758, plates.get("standard_deviation").doubleValue(), AS_R);
        assertEquals(21, plates.get("levels").size());
        var first = plates.get("levels").get(0);
        assertEquals(List.of("level", "effect", "standard_deviation"), names(first));
        assertEquals("P01", first.get("level").textValue());
        assertEquals(-0.158500984824952, first.get("effect").doubleValue(), AS_R);
        assertEquals(0.193172541121459, first.get("standard_deviation").doubleValue(), AS_R);
        assertEquals(-53.7695714554316, json.get("log_likelihood").doubleValue(), 1e-5);
        assertEquals(21, json.get("rows").intValue());
        assertTrue(json.get("converged").booleanValue());
        assertFalse(json.get("singular").booleanValue());
    }

    /** The same plates by their words: the first in the alphabet is what the others are held against. */
    @Test
    void model_readsWordsAsCategories() throws IOException {
        var json = json(
                model(SEEDS, "--fixed", "seed,extract", "--interaction", "seed,extract", "--random", "row", "--json"));
        assertTerm(json, 1, "seed=O75", -0.0974261590635411, 0.2773890543891);
        assertEquals("extract=cucumber", json.get("fixed").get(2).get("term").textValue());
        assertTerm(json, 3, "seed=O75 by extract=cucumber", 0.81002920519427, 0.38422082797415);
        assertEquals("row", json.get("random").get(0).get("group").textValue());
        assertEquals(
                "1", json.get("random").get(0).get("levels").get(0).get("level").textValue());
        var forced =
                json(model(SEEDS, "--fixed", "x1", "--interaction", "extract,x1", "--categorical", "x1", "--json"));
        assertEquals(
                List.of("intercept", "x1=1", "extract=cucumber", "extract=cucumber by x1=1"),
                forced.get("fixed").findValuesAsText("term"));
    }

    /** One word among numbers makes the column one of words, wherever it stands. */
    @Test
    void model_answersTheSame_whateverTheOrderOfRows() throws IOException {
        var rows = List.of("40,54,1", "45,54,1", "30,54,2", "41,54,2", "38,54,2b", "20,54,2b");
        var down = json(model("r,n,pen\n" + String.join("\n", rows), "--fixed", "pen", "--json"));
        var up = json(model("r,n,pen\n" + String.join("\n", rows.reversed()), "--fixed", "pen", "--json"));
        assertEquals(List.of("intercept", "pen=2", "pen=2b"), down.get("fixed").findValuesAsText("term"));
        assertEquals(down.get("fixed").findValuesAsText("term"), up.get("fixed").findValuesAsText("term"));
        assertEquals(
                down.get("log_likelihood").doubleValue(),
                up.get("log_likelihood").doubleValue(),
                1e-9);
    }

    @Test
    void model_agreesWithR_byQuadrature() throws IOException {
        var json = json(model(
                SEEDS,
                "--fixed",
                "x1,x2",
                "--interaction",
                "x2,x1",
                "--random",
                "plate",
                "--quadrature",
                "25",
                "--json"));
        assertTerm(json, 0, "intercept", -0.548431731777371, 0.166593410988153);
        assertTerm(json, 3, "x2 by x1", -0.81045652352067, 0.385171276093593);
        assertEquals(-53.7574206951294, json.get("log_likelihood").doubleValue(), 1e-5);
    }

    @Test
    void model_groupsByTwoColumnsTogether_andGivesIntervals() throws IOException {
        var json = json(model(SEEDS, "--random", "seed+extract,row", "--profile", "0.95", "--json"));
        var random = json.get("random");
        assertEquals("seed+extract", random.get(0).get("group").textValue());
        assertEquals(4, random.get(0).get("levels").size());
        assertEquals("O75+bean", random.get(0).get("levels").get(0).get("level").textValue());
        for (var group : random) {
            assertEquals(List.of("group", "standard_deviation", "low", "high", "levels"), names(group));
            assertTrue(group.get("low").doubleValue()
                    <= group.get("standard_deviation").doubleValue());
            assertTrue(group.get("high").doubleValue()
                    >= group.get("standard_deviation").doubleValue());
        }
    }

    @Test
    void model_isATable_withoutJson() throws IOException {
        var run = model(SEEDS, "--fixed", "x1", "--random", "plate");
        assertEquals(Status.DONE, run.status(), run.err());
        assertTrue(run.lines().contains("fixed"), run.out());
        assertTrue(run.out().contains("plate: levels"), run.out());
        assertFalse(run.out().contains("NaN"), run.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--fixed sead | has no column \"sead\". Did you mean \"seed\"? It has: plate, seed, extract, x1, x2, r, n.",
                "--fixed x1,x1 | --fixed: \"x1\" is named twice. Name it once.",
                "--fixed x1, | --fixed: a name is missing beside a comma in \"x1,\".",
                "--interaction x1 | --interaction: \"x1\" names 1 columns. Name two, as storage_days,machine,",
                "--random plate,row | \"row\" and \"plate\" part the rows alike",
                "--random plate,seed --quadrature 9 | --quadrature: 9 nodes need exactly one random column, and there are 2.",
                "--random plate --quadrature 0 | --quadrature: 0 is outside 1 to 100 nodes.",
                "--random plate --profile 2 | --profile: 2.0 is outside 0.5 to 0.999.",
            })
    void model_saysWhatIsWrong(String options, String sentence) throws IOException {
        var words = options.split(" ");
        var run = model(
                SEEDS, Stream.concat(Stream.of(words), Stream.of("--json")).toArray(String[]::new));
        assertEquals(Status.WRONG_INPUT, run.status(), run.out());
        assertTrue(run.err().contains(sentence), run.err());
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4,5;6,5 | counts 6 successes of 5 in row 3. There cannot be more than all.",
                "4,5;x,5 | has \"x\" in row 3, column \"r\", which is not a whole number. Write it like 54.",
                "4,5;NaN,5 | has \"NaN\" in row 3, column \"r\", which is not a whole number.",
                "4,5;,5 | has nothing in row 3, column \"r\".",
                "4,5;-1,5 | has \"-1\" in row 3, column \"r\", which is outside 0 to 100000000.",
                "4,5;2 | has nothing in row 3, column \"n\".",
                "0,5;0,9 | None of the trials of all rows were successes, so that no effect has a finite size.",
                "5,5;9,9 | All of the trials of all rows were successes",
                "0,0;0,0 | 0 trials in 2 rows: there is nothing to learn from.",
            })
    void model_namesWhatIsWrongInTheFile(String rows, String sentence) throws IOException {
        var run = model("r,n\n" + rows.replace(';', '\n') + "\n", "--random", "row", "--json");
        assertEquals(Status.WRONG_INPUT, run.status(), run.out());
        assertTrue(run.err().contains(sentence), run.err());
        assertTrue(run.err().contains("Nothing was worked out."), run.err());
        assertEquals("", run.out());
    }

    @Test
    void model_namesCollinearAndPartingColumns() throws IOException {
        var collinear = model("r,n,a,b,c\n4,9,1,2,k\n5,9,2,4,k\n3,9,4,8,k\n6,9,3,6,k\n", "--fixed", "a,b");
        assertTrue(collinear.err().contains("\"b\" can be had from \"a\""), collinear.err());
        var constant = model("r,n,c\n4,9,k\n5,9,k\n", "--fixed", "c");
        assertTrue(constant.err().contains("\"k\" in every row of column \"c\""), constant.err());
        var parting = model("r,n,machine\n4,9,A\n5,9,A\n0,9,B\n0,9,B\n", "--fixed", "machine", "--random", "row");
        assertEquals(Status.WRONG_INPUT, parting.status());
        var many = model(SEEDS, "--fixed", "plate,x1");
        assertTrue(many.err().contains("\"x1\" can be had from \"plate=P12\", "), many.err());
        assertTrue(many.err().contains(" and 5 more, so that their effects"), many.err());
        assertTrue(parting.err().contains("\"machine=B\" parts the rows where all were successes"), parting.err());
    }

    @Test
    void model_answersInWhole_whateverIsFewOrTheSame() throws IOException {
        for (var text : List.of(
                "r,n,pen\n45,54,4\n",
                "r,n,pen\n45,54,4\n45,54,4\n45,54,4\n",
                "r,n,pen\n45,54,1\n45,54,2\n",
                "r,n,pen\n0,0,1\n45,54,2\n\n41,54,2\n")) {
            var run = model(text, "--random", "pen", "--json");
            assertEquals(Status.DONE, run.status(), run.err());
            assertFalse(run.out().contains("NaN"), run.out());
            assertTrue(json(run).get("singular").booleanValue(), run.out());
        }
    }

    /** McCullagh and Nelder's matings are 0 or 1; no column of trials is named. */
    @Test
    void model_takesZerosAndOnes_withoutTrials() throws IOException {
        var text = new StringBuilder("hatched,pen\n");
        for (int egg = 0; egg < 60; egg++) {
            text.append((egg * 7 % 11 < 6 ? 1 : 0)).append(",P").append(egg % 5).append('\n');
        }
        var file = folder.resolve("eggs.csv");
        Files.writeString(file, text);
        var run = Run.of("calc", "mixed-model", file.toString(), "--successes", "hatched", "--random", "pen", "--json");
        assertEquals(60, json(run).get("rows").intValue());
        Files.writeString(file, "hatched,pen\n1,P1\n3,P1\n");
        var refused = Run.of("calc", "mixed-model", file.toString(), "--successes", "hatched", "--json");
        assertTrue(refused.err().contains("counts 3 successes of 1 in row 3. Without --trials"), refused.err());
    }

    @Test
    void model_saysWhatIsStillNeeded() {
        assertTrue(Run.of("calc", "mixed-model").err().startsWith("The file is still needed."));
        assertEquals(
                "--successes is still needed.\n",
                Run.of("calc", "mixed-model", "none.csv").err());
        assertTrue(Run.of("calc", "mixed-model", "none.csv", "--successes", "r")
                .err()
                .contains("none.csv is not there."));
    }

    private static void assertTerm(JsonNode json, int at, String term, double estimate, double error) {
        var node = json.get("fixed").get(at);
        assertEquals(term, node.get("term").textValue());
        assertEquals(estimate, node.get("estimate").doubleValue(), AS_R * Math.max(0.1, Math.abs(estimate)));
        assertEquals(error, node.get("standard_error").doubleValue(), AS_R * error);
    }

    private static List<String> names(JsonNode node) {
        var names = new ArrayList<String>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private Run model(String text, String... options) throws IOException {
        var file = folder.resolve("plates.csv");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        return Run.of(Stream.concat(
                        Stream.of("calc", "mixed-model", file.toString(), "--successes", "r", "--trials", "n"),
                        Stream.of(options))
                .toArray(String[]::new));
    }

    private static JsonNode json(Run run) throws IOException {
        if (run.status() != Status.DONE || !run.out().startsWith("{")) {
            throw new AssertionError(run.toString());
        }
        return new ObjectMapper().readTree(run.out());
    }
}
