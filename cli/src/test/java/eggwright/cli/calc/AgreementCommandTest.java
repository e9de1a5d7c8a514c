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
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AgreementCommandTest {
    /** Fleiss, Cohen and Everitt 1969, Psychol. Bull. 72:323, table 1, of 200 (from memory). */
    private static final String FLEISS_COHEN_EVERITT = ",a,b,c\na,106,10,4\nb,22,28,10\nc,2,12,6\n";

    @TempDir
    Path folder;

    /** They print kappa .429; the rest is R 4.2.2's answer, kept with core/stats. */
    @Test
    void agreement_answersThePublishedTable() throws IOException {
        var json = json(agreement(FLEISS_COHEN_EVERITT));
        var names = new ArrayList<String>();
        json.fieldNames().forEachRemaining(names::add);
        assertEquals(
                List.of("kappa", "standard_error", "low", "high", "observed_agreement", "expected_agreement"), names);
        assertEquals(0.429, json.get("kappa").doubleValue(), 0.0005);
        assertEquals(0.428571428571429, json.get("kappa").doubleValue(), 1e-10);
        assertEquals(0.0537110048691673, json.get("standard_error").doubleValue(), 1e-10);
        assertEquals(0.323299793454405, json.get("low").doubleValue(), 1e-10);
        assertEquals(0.533843063688452, json.get("high").doubleValue(), 1e-10);
        assertEquals(0.7, json.get("observed_agreement").doubleValue(), 1e-10);
        assertEquals(0.475, json.get("expected_agreement").doubleValue(), 1e-10);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "look 1 \\ look 2,c,a,b\nb,10,22,28\na,4,106,10\n\nc,6,2,12\n",
                "\uFEFF;a;b;c;\r\na;106;10;4;\r\nb; 22 ;28;10;\r\n;;;;\r\nc;2;12;6;",
                "\ta\tb\tc\na\t106\t10\t4\nb\t22\t28\t10\nc\t2\t12\t6",
            })
    void agreement_readsTheSameTable_howeverItIsWritten(String text) throws IOException {
        assertEquals(agreement(FLEISS_COHEN_EVERITT).out(), agreement(text).out());
    }

    @Test
    void agreement_tellsEachCategory_whenAsked() throws IOException {
        var json = json(Run.of(
                "calc",
                "agreement",
                "--table",
                file(",live,clear,rot\nlive,80,5,0\nclear,10,5,0\nrot,0,0,0\n"),
                "--categories",
                "all",
                "--json"));
        var each = json.get("by_category");
        assertEquals(3, each.size());
        assertEquals("live", each.get(0).get("category").textValue());
        assertEquals(160 / 175.0, each.get(0).get("estimate").doubleValue(), 1e-12);
        assertEquals(0.4, each.get(1).get("estimate").doubleValue(), 1e-12);
        assertTrue(each.get(1).get("low").doubleValue() < 0.4
                && each.get(1).get("high").doubleValue() > 0.4);
        assertTrue(each.get(2).get("estimate").isNull());
        assertEquals(
                "neither look called any egg so",
                each.get(2).get("not_estimable").textValue());
    }

    @Test
    void agreement_isAListForPeople_withoutJson() throws IOException {
        var run = Run.of(
                "calc", "agreement", "--table", file(",live,clear\nlive,80,5\nclear,10,5\n"), "--categories", "clear");
        assertEquals(Status.DONE, run.status(), run.err());
        assertEquals("kappa               0.318182", run.lines().getFirst());
        assertTrue(run.lines().getLast().startsWith("by category         category clear, agreed 5, differed 15"));
    }

    @Test
    void agreement_saysThatKappaCannotBeTold_whenAllEggsWereLive() throws IOException {
        var json = json(agreement(",live,clear\nlive,54,0\nclear,0,0\n"));
        assertTrue(json.get("kappa").isNull() && json.get("standard_error").isNull());
        assertTrue(json.get("low").isNull() && json.get("high").isNull());
        assertEquals(1, json.get("observed_agreement").doubleValue());
        assertTrue(json.get("not_estimable").textValue().contains("0 / 0"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | is empty. Write the second look's categories in the first row",
                "'live\n' | names no category in row 1.",
                "',live,,rot\n' | has no name over column 3 in row 1. Name the category.",
                "',live,live\n' | has the column \"live\" twice. Name it once.",
                "',live,clear\nlive,50,1\ncleer,2,3\n' | names \"cleer\" in row 3, which no column does. Did you mean",
                "',live,clear\nlive,50,1\nlive,2,3\n' | names \"live\" in row 3 for the second time. Name it once.",
                "',live,clear\nlive,50,1\n' | has a column \"clear\" but no row of that name. Give it a row",
                "',live,clear\nlive,50,1\nclear,2,3.5\n' | has \"3.5\" in row 3 (clear), column \"clear\", which is not",
                "',live,clear\nlive,50,-1\nclear,2,3\n' | has -1 in row 2 (live), column \"clear\", which is outside 0",
                "',live,clear\nlive,50\nclear,2,3\n' | has no count in row 2 (live), column \"clear\". Write 0",
                "',live,clear\nlive,50,1,7\nclear,2,3\n' | has \"7\" in row 2 (live), column 4, but row 1 names no",
                "',live,clear\n,50,1\nclear,2,3\n' | has no name in row 2, column 1. Name the category.",
                "',live,clear\nlive,0,0\nclear,0,0\n' | counts 0 in all, which is outside 1 to 10000000.",
                "',live,Total\nlive,50,50\nTotal,50,50\n' | has a column \"Total\". Leave sums out",
            })
    void agreement_saysWhatIsWrongInTheTable(String text, String sentence) throws IOException {
        var run = agreement(text);
        assertEquals(Status.WRONG_INPUT, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("looks.csv " + sentence), run.err());
        assertTrue(run.err().endsWith("Nothing was worked out.\n"), run.err());
    }

    @Test
    void agreement_refusesAFileThatIsNotThere_orIsNoText() throws IOException {
        var missing = Run.of(
                "calc", "agreement", "--table", folder.resolve("none.csv").toString());
        assertEquals(Status.WRONG_INPUT, missing.status());
        assertTrue(missing.err().contains("none.csv is not there."), missing.err());
        var picture = folder.resolve("picture.csv");
        Files.write(picture, new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0, (byte) 0xff});
        var binary = Run.of("calc", "agreement", "--table", picture.toString());
        assertEquals(Status.WRONG_INPUT, binary.status());
        assertTrue(binary.err().contains("picture.csv is not text in UTF-8"), binary.err());
    }

    @Test
    void agreement_namesTheNearCategory_whenOneIsMistyped() throws IOException {
        var run = Run.of(
                "calc", "agreement", "--table", file(",live,clear\nlive,80,5\nclear,10,5\n"), "--categories", "cler");
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().startsWith("--categories: the table has no category \"cler\". Did you mean \"clear\"?"));
    }

    @Test
    void agreement_worksDownAListOfTables() throws IOException {
        var table = file(FLEISS_COHEN_EVERITT);
        var list = folder.resolve("list.csv");
        Files.writeString(list, "table\n" + table + "\n" + folder.resolve("none.csv") + "\n");
        var run = Run.of("calc", "agreement", "--rows", list.toString(), "--json");
        assertEquals(Status.NO, run.status());
        assertEquals(
                agreement(FLEISS_COHEN_EVERITT).lines().getFirst(), run.lines().get(0));
        assertTrue(run.lines().get(1).startsWith("{\"row\":3,\"error\":"), run.out());
    }

    private Run agreement(String text) throws IOException {
        return Run.of("calc", "agreement", "--table", file(text), "--json");
    }

    private String file(String text) throws IOException {
        var file = folder.resolve("looks.csv");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        return file.toString();
    }

    private static JsonNode json(Run run) throws IOException {
        assertEquals(Status.DONE, run.status(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
