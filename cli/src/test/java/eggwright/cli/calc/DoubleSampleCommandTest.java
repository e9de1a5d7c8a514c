package eggwright.cli.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import eggwright.cli.Run;
import eggwright.cli.voice.Status;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoubleSampleCommandTest {
    /** Injuries of Hochberg 1977, J. Am. Stat. Assoc. 72:914: 80,084 looked at, 1,796 known; Tenenbein's variance by R. */
    @Test
    void doubleSample_answersThePublishedInjuries() throws IOException {
        var run = sample(14758 + 324, 81880, 324, 288, 1472, 238);
        assertEquals(Status.DONE, run.status(), run.err());
        var json = new ObjectMapper().readTree(run.out());
        var names = new ArrayList<String>();
        json.fieldNames().forEachRemaining(names::add);
        assertEquals(List.of("prevalence", "standard_error", "low", "high", "level"), names);
        assertEquals(0.295633150108914, json.get("prevalence").doubleValue(), 1e-10);
        assertEquals(0.00852454843143205, json.get("standard_error").doubleValue(), 1e-10);
        assertEquals(0.279203559761618, json.get("low").doubleValue(), 1e-10);
        assertEquals(0.312610233002917, json.get("high").doubleValue(), 1e-10);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "90 | 54 | 6 | 4 | 3 | 0 | --tested-positive: 90 is outside 0 to 54, those tested.",
                "9 | 54 | 10 | 4 | 3 | 0 | --opened-positive: 10 is outside 0 to 9, those that tested positive.",
                "9 | 54 | 6 | 7 | 3 | 0 | --true-in-positive: 7 is outside 0 to 6, those opened of them.",
                "9 | 54 | 6 | 4 | 46 | 0 | --opened-negative: 46 is outside 0 to 45, those that tested negative.",
                "9 | 54 | 6 | 4 | 3 | 4 | --true-in-negative: 4 is outside 0 to 3, those opened of them.",
                "9 | 54 | 6 | 4 | 0 | 0 | 45 eggs were called no but the truth is known of none of them: "
                        + "nothing can be said about these.",
                "-9 | 54 | 6 | 4 | 0 | 0 | --tested-positive: -9 is outside 0 to 54, those tested.",
            })
    void doubleSample_namesWhatDoesNotFit(
            long positive, long tested, long opened, long isTrue, long openedNo, long trueNo, String sentence) {
        var run = sample(positive, tested, opened, isTrue, openedNo, trueNo);
        assertEquals(new Run(Status.WRONG_INPUT, "", sentence + "\n"), run);
    }

    private static Run sample(long positive, long tested, long opened, long isTrue, long openedNo, long trueNo) {
        return Run.of(
                "calc",
                "double-sample",
                "--tested-positive=" + positive,
                "--tested",
                "" + tested,
                "--opened-positive",
                "" + opened,
                "--true-in-positive",
                "" + isTrue,
                "--opened-negative",
                "" + openedNo,
                "--true-in-negative",
                "" + trueNo,
                "--json");
    }
}
