package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.List;

/** An interval round so many of so many. */
final class IntervalCalculation implements Calculation {
    @Override
    public String name() {
        return "interval";
    }

    @Override
    public String about() {
        return "How sure a rate is: the interval round so many of so many. Answers are shares, 0 to 1.";
    }

    @Override
    public String example() {
        return "eggwright calc interval --successes 51 --trials 54";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("successes", "N", "those that did, as 51 fertile eggs"),
                Input.needed("trials", "N", "those that could have, as 54 eggs set"),
                Input.optional("level", "SHARE", "share of such intervals that hold the truth; 0.95 where not said"),
                Input.optional(
                        "method", "WORD", "wilson (where not said), jeffreys, clopper-pearson or agresti-coull"));
    }

    @Override
    public Answer answer(Given given) {
        var rate = rate(given);
        var method = given.text("method").map(IntervalMethod::parse).orElse(IntervalMethod.WILSON);
        var interval = Intervals.of(rate, method, given.number("level").orElse(0.95));
        return Answer.of()
                .with("estimate", interval.estimate())
                .with("low", interval.low())
                .with("high", interval.high())
                .with("method", interval.method().word())
                .with("level", interval.level());
    }

    private static Rate rate(Given given) {
        long successes = given.neededWhole("successes");
        long trials = given.neededWhole("trials");
        if (trials < 1) {
            throw given.wrong("trials", trials + " is less than 1; with nothing counted there is no rate.");
        }
        if (successes < 0 || successes > trials) {
            throw given.wrong("successes", successes + " is outside 0 to " + trials + ", the trials.");
        }
        return new Rate(successes, trials);
    }
}
