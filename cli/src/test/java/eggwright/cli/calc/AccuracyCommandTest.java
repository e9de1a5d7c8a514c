package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import eggwright.cli.Run;
import eggwright.cli.voice.Status;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccuracyCommandTest {
    @TempDir
    Path folder;

    /**
     * Scott, Greenberg and Poole 2008, Intern. Med. J. 38:120 (from memory), as the help of R's epiR prints it:
     * sensitivity 0.90 (0.88 to 0.92), specificity 0.76 (0.73 to 0.79).
     */
    @Test
    void accuracy_agreesWithAPrintedExample() throws IOException {
        var json = json(accuracy("670", "202", "74", "640"));
        var names = new ArrayList<String>();
        json.fieldNames().forEachRemaining(names::add);
        assertEquals(
                List.of("sensitivity", "specificity", "positive_predictive_value", "negative_predictive_value"), names);
        isNear(0.90, 0.88, 0.92, json.get("sensitivity"));
        isNear(0.76, 0.73, 0.79, json.get("specificity"));
        assertEquals(
                670 / 872.0,
                json.get("positive_predictive_value").get("estimate").doubleValue());
        assertEquals(
                640 / 714.0,
                json.get("negative_predictive_value").get("estimate").doubleValue());
    }

    private static void isNear(double estimate, double low, double high, JsonNode share) {
        double halfADigit = 0.5e-2;
        assertEquals(estimate, share.get("estimate").doubleValue(), halfADigit);
        assertEquals(low, share.get("low").doubleValue(), halfADigit);
        assertEquals(high, share.get("high").doubleValue(), halfADigit);
    }

    @Test
    void accuracy_hasTheLimitsOfCalcInterval() throws IOException {
        var share = json(accuracy("178", "9", "22", "391")).get("sensitivity");
        var interval = json(Run.of("calc", "interval", "--successes", "178", "--trials", "200", "--json"));
        for (var key : List.of("estimate", "low", "high")) {
            assertEquals(interval.get(key), share.get(key), key);
        }
    }

    @Test
    void accuracy_saysWhatCannotBeTold_insteadOfNone() throws IOException {
        var json = json(accuracy("0", "0", "0", "54"));
        assertTrue(json.get("sensitivity").get("estimate").isNull());
        assertTrue(json.get("sensitivity").get("low").isNull());
        assertEquals(
                "none of those counted truly was so",
                json.get("sensitivity").get("not_estimable").textValue());
        assertEquals(1, json.get("specificity").get("estimate").doubleValue());
        assertEquals(
                "none was called so",
                json.get("positive_predictive_value").get("not_estimable").textValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-1 | 2 | 3 | 4 | --true-positive: -1 is outside 0 to 1000000000.",
                "1 | 2.5 | 3 | 4 | --false-positive: \"2.5\" is not a whole number. Write it like 54.",
                "1 | 2 | 9999999999 | 4 | --false-negative: 9999999999 is outside 0 to 1000000000.",
                "0 | 0 | 0 | 0 | --true-positive: this and the three others are 0; "
                        + "with nothing counted there is no rate.",
            })
    void accuracy_saysWhatIsWrong(String tp, String fp, String fn, String tn, String sentence) {
        assertEquals(new Run(Status.WRONG_INPUT, "", sentence + "\n"), accuracy(tp, fp, fn, tn));
    }

    @Test
    void accuracy_worksDownAFile_withBadRowsInTheirPlace() throws IOException {
        var file = folder.resolve("rows.csv");
        Files.writeString(
                file, "true_positive,false_positive,false_negative,true_negative\n670,202,74,640\n1,2,3,\n0,0,0,5\n");
        var run = Run.of("calc", "accuracy", "--rows", file.toString(), "--json");
        assertEquals(Status.NO, run.status());
        assertEquals(
                accuracy("670", "202", "74", "640").lines().getFirst(),
                run.lines().get(0));
        assertEquals(
                "{\"row\":3,\"error\":\"Column \\\"true-negative\\\" is still needed.\"}",
                run.lines().get(1));
        assertEquals(
                accuracy("0", "0", "0", "5").lines().getFirst(), run.lines().get(2));
    }

    private static Run accuracy(String tp, String fp, String fn, String tn) {
        return Run.of(
                "calc",
                "accuracy",
                "--true-positive",
                tp,
                "--false-positive",
                fp,
                "--false-negative",
                fn,
                "--true-negative",
                tn,
                "--json");
    }

    private static JsonNode json(Run run) throws IOException {
        assertEquals(Status.DONE, run.status(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
