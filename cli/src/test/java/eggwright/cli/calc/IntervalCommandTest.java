package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import eggwright.cli.Run;
import eggwright.cli.voice.Status;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntervalCommandTest {
    /** The table prints four decimals. */
    private static final double HALF_A_PRINTED_DIGIT = 0.00005;

    /** Newcombe 1998, Stat. Med. 17:857, Table I, methods 3 (Wilson) and 5 (Clopper-Pearson). */
    @ParameterizedTest
    @CsvSource({
        "81, 263, wilson, 0.2553, 0.3662",
        "15, 148, wilson, 0.0624, 0.1605",
        "0, 20, wilson, 0.0000, 0.1611",
        "1, 29, wilson, 0.0061, 0.1718",
        "81, 263, clopper-pearson, 0.2527, 0.3676",
        "15, 148, clopper-pearson, 0.0578, 0.1617",
        "0, 20, clopper-pearson, 0.0000, 0.1684",
        "1, 29, clopper-pearson, 0.0009, 0.1776",
    })
    void interval_agreesWithTheMethodsTable(String successes, String trials, String method, double low, double high)
            throws IOException {
        var json = json(Run.of(
                "calc",
                "interval",
                "--successes",
                successes,
                "--trials",
                trials,
                "--method",
                method,
                "--level",
                "0.95",
                "--json"));
        assertEquals(low, json.get("low").doubleValue(), HALF_A_PRINTED_DIGIT);
        assertEquals(high, json.get("high").doubleValue(), HALF_A_PRINTED_DIGIT);
    }

    @Test
    void interval_isWilsonsAt95_whereNotSaid() throws IOException {
        var json = json(Run.of("calc", "interval", "--successes", "51", "--trials", "54", "--json"));
        var names = new java.util.ArrayList<String>();
        json.fieldNames().forEachRemaining(names::add);
        assertEquals(List.of("estimate", "low", "high", "method", "level"), names);
        assertEquals("wilson", json.get("method").textValue());
        assertEquals(0.95, json.get("level").doubleValue());
        assertEquals(51 / 54.0, json.get("estimate").doubleValue());
    }

    @Test
    void interval_isATable_withoutJson() {
        var run = Run.of("calc", "interval", "--successes", "51", "--trials", "54");
        assertEquals(Status.DONE, run.status());
        assertEquals(
                List.of("estimate  0.944444", "low       0.848928", "high      0.980927"),
                run.lines().subList(0, 3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "55 | 54 | 0.95 | wilson | --successes: 55 is outside 0 to 54, the trials.",
                "-1 | 54 | 0.95 | wilson | --successes: -1 is outside 0 to 54, the trials.",
                "0 | 0 | 0.95 | wilson | --trials: 0 is less than 1; with nothing counted there is no rate.",
                "5.5 | 54 | 0.95 | wilson | --successes: \"5.5\" is not a whole number. Write it like 54.",
                "5 | 54 | 0,95 | wilson | --level: \"0,95\" is not a number. Write it like 0.95, with a point.",
                "5 | 54 | NaN | wilson | --level: \"NaN\" is not a number. Write it like 0.95, with a point.",
                "5 | 54 | 1 | wilson | An interval's level of 1.0 is outside 0 to 1 (0.95 is usual).",
                "5 | 54 | 0.95 | wald | There is no interval method \"wald\". "
                        + "There are wilson, jeffreys, clopper-pearson, agresti-coull.",
            })
    void interval_saysWhatIsWrong(String successes, String trials, String level, String method, String sentence) {
        var run = Run.of(
                "calc",
                "interval",
                "--successes",
                successes,
                "--trials",
                trials,
                "--level",
                level,
                "--method",
                method,
                "--json");
        assertEquals(new Run(Status.WRONG_INPUT, "", sentence + "\n"), run);
    }

    @Test
    void interval_saysWhatIsStillNeeded() {
        var run = Run.of("calc", "interval", "--trials", "54");
        assertEquals(new Run(Status.WRONG_INPUT, "", "--successes is still needed.\n"), run);
    }

    private static JsonNode json(Run run) throws IOException {
        assertEquals(Status.DONE, run.status(), run.err());
        assertTrue(run.out().endsWith("}\n"), run.out());
        return new ObjectMapper().readTree(run.out());
    }
}
