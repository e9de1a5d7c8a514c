package eggwright.cli.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.Main;
import eggwright.rates.Dimension;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The report of one invented season. */
final class ReportCommandTest {
    @TempDir
    private static Path folder;

    private static String data = "";

    @BeforeAll
    static void simulateASeason() {
        data = folder.resolve("season").toString();
        said("simulate", "--seed", "7", "--out", data);
    }

    private static String said(String... words) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int status = Main.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                words);
        assertEquals(0, status, err.toString(StandardCharsets.UTF_8));
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The keys that other programs were promised, each in its place in every group and in the total. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void json_keepsWhatOtherProgramsWerePromised(Dimension by) {
        var json = said("report", "--by", by.word(), "--json", "--data", data);
        assertTrue(json.startsWith("{\"groups\":[{\"key\":"), json.substring(0, 60));
        var rate =
                "\\{\"successes\":\\d+,\"trials\":\\d+,\"estimate_pct\":[^,]+,\"low_pct\":[^,]+,\"high_pct\":[^}]+\\}";
        for (var name : List.of("fertility", "hatch_of_set", "hatch_of_fertile", "chicks_of_set")) {
            assertTrue(Pattern.compile("\"" + name + "\":" + rate).matcher(json).find(), name);
        }
        for (var stage : List.of(
                "blood_ring",
                "dead",
                "cracked",
                "rot",
                "early_dead",
                "mid_dead",
                "late_dead",
                "pipped_dead",
                "contaminated",
                "malformed",
                "culled",
                "dead_in_basket")) {
            assertTrue(json.contains("{\"stage\":\"" + stage + "\",\"eggs\":"), stage);
        }
        var groups = count("\"eggs_set\":", json);
        for (var key : List.of(
                "key", "basis", "losses", "infertile", "clears_unopened", "still_in", "undetermined", "unaccounted")) {
            assertTrue(count("\"" + key + "\":", json) >= groups, key);
        }
        assertTrue(json.indexOf("\"total\":{\"key\":\"all\"") > 0);
    }

    @Test
    void json_saysForEveryGroup_whetherItDiffersByMoreThanLuck() {
        var json = said("report", "--by", "pen", "--json", "--data", data);
        int groups = count("\"eggs_set\":", json) - 1;
        assertEquals(groups, count("\"fertility_contrast\":{\"verdict\":\"", json));
        assertEquals(groups, count("\"hatch_contrast\":{\"verdict\":\"", json));
        assertTrue(json.contains("\"verdict\":\"could_be_luck\""), json);
        assertTrue(json.contains("\"fertility_compared_by\":\""), json);
        assertTrue(json.contains("\"fertility_ranking\":\""), json);
    }

    /** Eggs in the windows are those that the total has as dead or ringed at the lamp. */
    @Test
    void json_tellsTheDaysInWhichTheLampsDeadDied() {
        var json = said("report", "--by", "none", "--json", "--data", data);
        int windows = Pattern.compile("\"seen_as\":\"[a-z_]+\",\"eggs\":(\\d+),\"from_day\":\\d+,\"to_day\":\\d+")
                .matcher(json)
                .results()
                .mapToInt(m -> Integer.parseInt(m.group(1)))
                .sum();
        var total = json.substring(json.indexOf("\"total\":"));
        assertTrue(windows > 0);
        assertEquals(lost("dead", total) + lost("blood_ring", total), windows);
    }

    @Test
    void json_tellsWhatWasRejected_byPenAndByWeekOfLay() {
        var byPen = said("report", "--by", "pen", "--json", "--data", data);
        var byWeek = said("report", "--by", "lay-week", "--json", "--data", data);
        assertEquals(rejected(byPen), rejected(byWeek));
        assertTrue(byWeek.contains("\"rejects\":[{\"key\":\"2027-W"), byWeek.substring(byWeek.indexOf("\"rejects\"")));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void tables_showRatesLuckLossesAndDeaths(Dimension by) {
        var text = said("report", "--by", by.word(), "--data", data);
        assertTrue(text.startsWith("group "), text);
        assertTrue(text.contains("Eggs lost so far, by stage"), text);
        assertTrue(text.contains("died between two looks"), text);
        assertTrue(text.contains("Rejected at gathering"), text);
        if (by == Dimension.PEN) {
            assertTrue(text.contains("Against the rest of the farm"), text);
            assertTrue(Pattern.compile("luck \\(.*(1 in |in 100)").matcher(text).find(), text);
        }
    }

    @Test
    void columns_lineUp_howeverLongTheirCells() {
        var lines = said("report", "--by", "pen", "--data", data).lines().toList();
        int at = lines.getFirst().indexOf("hatch of set");
        for (var line : lines.subList(1, lines.indexOf(""))) {
            assertTrue(line.charAt(at - 1) == ' ' && line.charAt(at) != ' ', line);
        }
    }

    private static int count(String what, String in) {
        return in.split(Pattern.quote(what), -1).length - 1;
    }

    private static int lost(String stage, String total) {
        var match =
                Pattern.compile("\"stage\":\"" + stage + "\",\"eggs\":(\\d+)").matcher(total);
        assertTrue(match.find(), stage);
        return Integer.parseInt(match.group(1));
    }

    private static int rejected(String json) {
        return Pattern.compile("\"rejected\":\\{\"successes\":(\\d+)")
                .matcher(json)
                .results()
                .mapToInt(m -> Integer.parseInt(m.group(1)))
                .sum();
    }
}
