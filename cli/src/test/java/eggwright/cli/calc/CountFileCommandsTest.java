package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** calc beta-binomial, chart, death-curve: commands over a file of counts. Answers are R 4.2.2's; see core/stats. */
class CountFileCommandsTest {
    private static final double AS_R = 1e-9;

    /** Montgomery 1991, Introduction to Statistical Quality Control: cans of orange juice, of 50 each. */
    private static final int[] CANS = {
        12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6
    };

    /** Weil 1970: rats that lived, of litters. */
    private static final String RATS = """
            group,y,n
            CTRL,13,13
            CTRL,12,12
            CTRL,9,9
            CTRL,9,9
            CTRL,8,8
            CTRL,8,8
            CTRL,12,13
            CTRL,11,12
            CTRL,9,10
            CTRL,9,10
            CTRL,8,9
            CTRL,11,13
            CTRL,4,5
            CTRL,5,7
            CTRL,7,10
            CTRL,7,10
            TREAT,12,12
            TREAT,11,11
            TREAT,10,10
            TREAT,9,9
            TREAT,10,11
            TREAT,9,10
            TREAT,9,10
            TREAT,8,9
            TREAT,8,9
            TREAT,4,5
            TREAT,7,9
            TREAT,4,7
            TREAT,5,10
            TREAT,3,6
            TREAT,3,10
            TREAT,0,7
            """;

    /** A made-up break-out, sorted into ranges that overlap. */
    private static final String BREAK_OUT = """
            from_day,to_day,deaths
            24,,740
            0,4,33
            2,7,14
            4,9,12
            7,14,8
            10,18,9
            14,21,29
            18,22,18
            20,24,23
            21,24,14
            """;

    @TempDir
    Path folder;

    @Test
    void betaBinomial_agreesWithR_byGroup() throws IOException {
        var json = json(run("beta-binomial", RATS, "--successes", "y", "--trials", "n", "--by", "group", "--json"));
        assertEquals(List.of("by", "groups"), names(json));
        var control = json.get("groups").get(0);
        assertEquals(List.of("group", "mean", "overdispersion", "alpha", "beta", "log_likelihood"), names(control));
        double likelihood = 0;
        for (var group : json.get("groups")) {
            double alpha = group.get("alpha").doubleValue();
            double beta = group.get("beta").doubleValue();
            assertEquals(group.get("mean").doubleValue(), alpha / (alpha + beta), AS_R);
            assertEquals(group.get("overdispersion").doubleValue(), 1 / (alpha + beta + 1), AS_R);
            likelihood += group.get("log_likelihood").doubleValue();
        }
        assertEquals(-52.7852170031485, likelihood, 1e-6);
    }

    @Test
    void betaBinomial_saysWhatCannotBeTold() throws IOException {
        var alike = json(run("beta-binomial", "y,n\n45,54\n45,54\n", "--successes", "y", "--trials", "n", "--json"));
        assertEquals(0, alike.get("overdispersion").doubleValue());
        assertTrue(alike.get("alpha").isNull());
        assertTrue(alike.get("not_estimable").textValue().contains("no more than luck"));
        var none = json(run("beta-binomial", "y,n\n0,54\n0,54\n", "--successes", "y", "--trials", "n", "--json"));
        assertEquals(0, none.get("mean").doubleValue());
        assertTrue(none.get("overdispersion").isNull());
        var empty = json(run("beta-binomial", "y,n\n0,0\n", "--successes", "y", "--trials", "n", "--json"));
        assertTrue(empty.get("mean").isNull());
        var odd = run("beta-binomial", "y,n\n9,5\n", "--successes", "y", "--trials", "n");
        assertTrue(odd.err().contains("counts 9 successes of 5 in row 2"), odd.err());
    }

    @Test
    void chart_agreesWithTheHandbook() throws IOException {
        var json = json(chart("--kind", "p", "--json"));
        assertEquals(List.of("center", "points"), names(json));
        assertEquals(0.231333333333333, json.get("center").doubleValue(), AS_R);
        var first = json.get("points").get(0);
        assertEquals(List.of("index", "value", "low", "high", "outside"), names(first));
        assertEquals(1, first.get("index").intValue());
        assertEquals(0.24, first.get("value").doubleValue(), AS_R);
        assertEquals(0.0524275480719282, first.get("low").doubleValue(), AS_R);
        assertEquals(0.410239118594738, first.get("high").doubleValue(), AS_R);
        assertFalse(first.get("outside").booleanValue());
        assertTrue(json.get("points").get(14).get("outside").booleanValue());
        assertTrue(json.get("points").get(22).get("outside").booleanValue());
    }

    @Test
    void chart_agreesWithR_forLaneyAndTheRunningMean() throws IOException {
        var laney =
                json(chart("--kind", "p-overdispersed", "--json")).get("points").get(0);
        assertEquals(0, laney.get("low").doubleValue());
        assertEquals(0.528471998043532, laney.get("high").doubleValue(), AS_R);
        var ewma = json(chart("--kind", "ewma", "--json")).get("points").get(3);
        assertEquals(0.223330133333333, ewma.get("value").doubleValue(), AS_R);
        assertEquals(0.176930157875895, ewma.get("low").doubleValue(), AS_R);
        assertEquals(0.285736508790772, ewma.get("high").doubleValue(), AS_R);
        var other = chart("--kind", "ewma", "--lambda", "0.1", "--width", "2.7", "--json");
        assertEquals(Status.DONE, other.status(), other.err());
        var table = chart("--kind", "ewma");
        assertTrue(table.lines().contains("points"), table.out());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--kind q | --kind: there is no chart \"q\".",
                "--kind ewna | Did you mean \"ewma\"?",
                "--width 3 | --kind is still needed.",
                "--kind p --width 0 | --width: 0.0 is outside above 0 to 100 standard deviations.",
                "--kind p --lambda 0.2 | --lambda: it goes with --kind ewma alone.",
                "--kind ewma --lambda 2 | --lambda: 2.0 is outside above 0 to 1.",
            })
    void chart_saysWhatIsWrong(String options, String sentence) throws IOException {
        var run = chart(options.split(" "));
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains(sentence), run.err());
    }

    @Test
    void chart_answers_whateverWasCounted() throws IOException {
        var none = run("chart", "y,n\n0,54\n0,54\n", "--successes", "y", "--trials", "n", "--kind", "p", "--json");
        assertFalse(none.out().contains("NaN") || none.out().contains("true"), none.out());
        var gap = run("chart", "y,n\n4,54\n0,0\n9,54\n", "--successes", "y", "--trials", "n", "--kind", "p", "--json");
        assertTrue(json(gap).get("points").get(1).get("value").isNull());
        var single = run("chart", "y,n\n4,54\n", "--successes", "y", "--trials", "n", "--kind", "p-overdispersed");
        assertTrue(single.err().contains("from fewer than 2 counts"), single.err());
        var empty = run("chart", "y,n\n0,0\n", "--successes", "y", "--trials", "n", "--kind", "p");
        assertTrue(empty.err().contains("0 trials in 1 counts"), empty.err());
    }

    @Test
    void deathCurve_agreesWithR() throws IOException {
        var json = json(run("death-curve", BREAK_OUT, "--phases", "7,17,24", "--json"));
        assertEquals(List.of("steps", "log_likelihood", "converged", "weibull", "phases"), names(json));
        assertTrue(json.get("converged").booleanValue());
        assertEquals(-621.533711221601, json.get("log_likelihood").doubleValue(), 1e-6);
        var first = json.get("steps").get(0);
        assertEquals(List.of("from_day", "to_day", "probability", "survival"), names(first));
        assertEquals(2, first.get("from_day").doubleValue());
        assertEquals(4, first.get("to_day").doubleValue());
        assertEquals(0.0522222222222222, first.get("probability").doubleValue(), 1e-7);
        var last = json.get("steps").get(5);
        assertTrue(last.get("to_day").isNull());
        assertEquals(0.822222222222222, last.get("probability").doubleValue(), 1e-7);
        var weibull = json.get("weibull");
        assertEquals(160 / 900.0, weibull.get("death_share").doubleValue(), 1e-6);
        double early = weibull.get("early_weight").doubleValue() * diedByDay24(weibull, "early");
        double late = (1 - weibull.get("early_weight").doubleValue()) * diedByDay24(weibull, "late");
        assertEquals(early / (early + late), weibull.get("early_share").doubleValue(), 1e-9);
        assertTrue(weibull.get("early_mean_day").doubleValue()
                < weibull.get("late_mean_day").doubleValue());
        assertEquals(
                0.00942069548532489,
                json.get("phases").get(0).get("daily_probability").doubleValue(),
                1e-6);
        assertEquals(
                0.00125152209849072,
                json.get("phases").get(0).get("standard_error").doubleValue(),
                1e-6);
        var table = run("death-curve", BREAK_OUT);
        assertFalse(table.out().contains("NaN"), table.out());
        assertTrue(table.lines().containsAll(List.of("steps", "weibull")), table.out());
        assertTrue(table.out().contains("held at half a day"), table.out());
    }

    @Test
    void deathCurve_answersTheSame_whenEachOfAMillionEggsHasItsRow() throws IOException {
        var classes = BREAK_OUT.lines().skip(1).toList();
        var text = new StringBuilder("from_day,to_day,deaths\n");
        for (int times = 0; times < 100_000; times++) {
            for (var row : classes) {
                text.append(row, 0, row.lastIndexOf(',')).append(",1\n");
            }
        }
        var once = new StringBuilder("from_day,to_day,deaths\n");
        for (var row : classes) {
            once.append(row, 0, row.lastIndexOf(',')).append(",100000\n");
        }
        assertEquals(
                json(run("death-curve", once.toString(), "--json")),
                json(run("death-curve", text.toString(), "--json")));
    }

    @Test
    void deathCurve_saysThatTwoWavesCannotBeTold_fromFewClasses() throws IOException {
        var json = json(run("death-curve", "from_day,to_day,deaths\n0,4,12\n18,24,20\n24,,300\n", "--json"));
        assertEquals(3, json.get("steps").size());
        assertTrue(json.get("weibull").get("not_estimable").textValue().contains("2 classes of days"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7,4,1 | is wrong in row 2: Days 7.0 to 4.0 are not in order",
                "0,4,-1 | has \"-1\" in row 2, column \"deaths\", which is outside 0 to",
                ",4,1 | has nothing in row 2, column \"from_day\".",
                "x,4,1 | has \"x\" in row 2, column \"from_day\", which is not a number.",
                "0,4,0 | 0 eggs in 1 classes: there is no curve to tell.",
            })
    void deathCurve_namesWhatIsWrong(String row, String sentence) throws IOException {
        var run = run("death-curve", "from_day,to_day,deaths\n" + row + "\n", "--json");
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains(sentence), run.err());
        assertEquals("", run.out());
    }

    private static double diedByDay24(JsonNode weibull, String wave) {
        double scale = weibull.get(wave + "_scale_days").doubleValue();
        double shape = weibull.get(wave + "_shape").doubleValue();
        return 1 - Math.exp(-Math.pow(24 / scale, shape));
    }

    private Run chart(String... options) throws IOException {
        var text = "cans,of\n"
                + IntStream.of(CANS).mapToObj(count -> count + ",50\n").collect(Collectors.joining());
        return run(
                "chart",
                text,
                Stream.concat(Stream.of("--successes", "cans", "--trials", "of"), Stream.of(options))
                        .toArray(String[]::new));
    }

    private Run run(String command, String text, String... options) throws IOException {
        var file = folder.resolve("counts.csv");
        Files.writeString(file, text);
        return Run.of(Stream.concat(Stream.of("calc", command, file.toString()), Stream.of(options))
                .toArray(String[]::new));
    }

    private static List<String> names(JsonNode node) {
        var names = new ArrayList<String>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static JsonNode json(Run run) throws IOException {
        assertEquals(Status.DONE, run.status(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
