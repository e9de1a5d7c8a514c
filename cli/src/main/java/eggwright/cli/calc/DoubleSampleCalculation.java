package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.stats.doublesampling.DoubleSample;
import java.util.List;

/** The true share behind a look that errs, when some were opened. */
final class DoubleSampleCalculation implements Calculation {
    @Override
    public String name() {
        return "double-sample";
    }

    @Override
    public String about() {
        return "The true share behind a look that errs: all were looked at, and of both calls some were opened "
                + "(Tenenbein 1970). Open without choosing, or the answer is biased.";
    }

    @Override
    public String example() {
        return "eggwright calc double-sample --tested-positive 90 --tested 540 --opened-positive 40 "
                + "--true-in-positive 33 --opened-negative 20 --true-in-negative 1";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("tested-positive", "N", "called positive at the look, as clear; those opened count too"),
                Input.needed("tested", "N", "looked at in all; those opened count too"),
                Input.needed("opened-positive", "N", "opened of those called positive"),
                Input.needed("true-in-positive", "N", "of these, truly positive, as infertile"),
                Input.needed("opened-negative", "N", "opened of those called negative"),
                Input.needed("true-in-negative", "N", "of these, truly positive after all"),
                Input.optional("level", "SHARE", "share of such limits that hold the truth; 0.95 where not said"));
    }

    @Override
    public Answer answer(Given given) {
        long tested = count(given, "tested", Long.MAX_VALUE, "what can be counted");
        long positive = count(given, "tested-positive", tested, "those tested");
        long openedPositive = count(given, "opened-positive", positive, "those that tested positive");
        long trueInPositive = count(given, "true-in-positive", openedPositive, "those opened of them");
        long openedNegative = count(given, "opened-negative", tested - positive, "those that tested negative");
        long trueInNegative = count(given, "true-in-negative", openedNegative, "those opened of them");
        var sample = new DoubleSample(
                positive - openedPositive,
                tested - positive - openedNegative,
                trueInPositive,
                trueInNegative,
                openedPositive - trueInPositive,
                openedNegative - trueInNegative);
        double level = given.number("level").orElse(0.95);
        var share = sample.corrected(level);
        return Answer.of()
                .with("prevalence", share.estimate())
                .with("standard_error", share.standardError())
                .with("low", share.low())
                .with("high", share.high())
                .with("level", level);
    }

    private static long count(Given given, String input, long most, String what) {
        long count = given.neededWhole(input);
        if (count < 0 || count > most) {
            throw given.wrong(
                    input, count + " is outside 0 to " + (most == Long.MAX_VALUE ? what : most + ", " + what) + ".");
        }
        return count;
    }
}
