package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.stats.agreement.Accuracy;
import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.List;

/** How often a yes-or-no call was right, once the truth is known. */
final class AccuracyCalculation implements Calculation {
    private static final long MOST = 1_000_000_000;

    @Override
    public String name() {
        return "accuracy";
    }

    @Override
    public String about() {
        return "How often a call was right, once the truth is known, with Wilson's limits. Answers are shares, 0 to 1.";
    }

    @Override
    public String example() {
        return "eggwright calc accuracy --true-positive 91 --false-positive 6 --false-negative 5 --true-negative 498";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("true-positive", "N", "called so, and it was: called clear and infertile when opened"),
                Input.needed("false-positive", "N", "called so, and it was not: called clear and fertile when opened"),
                Input.needed("false-negative", "N", "not called so, but it was: left in and infertile at the end"),
                Input.needed("true-negative", "N", "not called so, and it was not: left in and fertile"),
                Input.optional("level", "SHARE", "share of such limits that hold the truth; 0.95 where not said"));
    }

    @Override
    public Answer answer(Given given) {
        var accuracy = new Accuracy(
                count(given, "true-positive"),
                count(given, "false-positive"),
                count(given, "false-negative"),
                count(given, "true-negative"));
        if (accuracy.equals(new Accuracy(0, 0, 0, 0))) {
            throw given.wrong(
                    "true-positive", "this and the three others are 0; with nothing counted there is no rate.");
        }
        double level = given.number("level").orElse(0.95);
        return Answer.of()
                .with("sensitivity", share(accuracy.sensitivity(), level, "none of those counted truly was so"))
                .with("specificity", share(accuracy.specificity(), level, "all of those counted truly were so"))
                .with(
                        "positive_predictive_value",
                        share(accuracy.positivePredictiveValue(), level, "none was called so"))
                .with(
                        "negative_predictive_value",
                        share(accuracy.negativePredictiveValue(), level, "all were called so"));
    }

    private static Answer share(Rate rate, double level, String whyNot) {
        if (rate.isEmpty()) {
            return Answer.of()
                    .with("estimate", Double.NaN)
                    .with("low", Double.NaN)
                    .with("high", Double.NaN)
                    .with("not_estimable", whyNot);
        }
        var interval = Intervals.of(rate, IntervalMethod.WILSON, level);
        return Answer.of()
                .with("estimate", interval.estimate())
                .with("low", interval.low())
                .with("high", interval.high());
    }

    private static long count(Given given, String input) {
        long count = given.neededWhole(input);
        if (count < 0 || count > MOST) {
            throw given.wrong(input, count + " is outside 0 to " + MOST + ".");
        }
        return count;
    }
}
