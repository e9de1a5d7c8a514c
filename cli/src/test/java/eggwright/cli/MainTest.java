package eggwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.cli.voice.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
    @Test
    void main_listsTheCommands_whenNothingIsAsked() {
        var run = Run.of();
        assertEquals(Status.DONE, run.status());
        assertTrue(run.out().contains("calc"), run.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "calc",
                "calc interval",
                "calc agreement",
                "calc accuracy",
                "calc predict",
                "calc dates",
                "calc species",
                "calc mixed-model",
                "calc beta-binomial",
                "calc double-sample",
                "calc chart",
                "calc death-curve"
            })
    void help_hasAnExample_onEveryCommand(String command) {
        var words = (command + " --help").strip().split(" ");
        var run = Run.of(words);
        assertEquals(Status.DONE, run.status());
        assertTrue(run.out().contains("Example: eggwright "), run.out());
        assertEquals("", run.err());
    }

    @Test
    void main_namesTheNearWord_whenACommandIsMistyped() {
        var run = Run.of("calk", "interval");
        assertEquals(
                new Run(
                        Status.WRONG_INPUT,
                        "",
                        "\"calk\" is not known here. Did you mean \"calc\"? Nothing was done. "
                                + "Examples: eggwright --help\n"),
                run);
    }

    @Test
    void main_namesTheNearOption_whenOneIsMistyped() {
        var run = Run.of("calc", "interval", "--sucesses", "51", "--trials", "54");
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains("Did you mean \"--successes\"?"), run.err());
    }

    @Test
    void main_refusesAnOptionGivenTwice() {
        var run = Run.of("calc", "interval", "--trials", "54", "--trials", "55", "--successes", "51");
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains("--trials is given twice"), run.err());
    }

    @Test
    void main_saysWhatIsMissing_whenAnOptionHasNoValue() {
        var run = Run.of("calc", "interval", "--trials");
        assertEquals(Status.WRONG_INPUT, run.status());
        assertTrue(run.err().contains("--trials"), run.err());
    }
}
