package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.stats.predictive.BetaBinomial;
import java.util.List;

/** How many of so many, when the share itself is uncertain. */
final class PredictCalculation implements Calculation {
    private static final long MOST_TRIALS = 10_000_000;

    @Override
    public String name() {
        return "predict";
    }

    @Override
    public String about() {
        return "How many of so many to expect, when their share is known only as Beta(alpha, beta).";
    }

    @Override
    public String example() {
        return "eggwright calc predict --trials 54 --alpha 40 --beta 8 --at-least 45";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("trials", "N", "eggs to come, as 54"),
                Input.needed("alpha", "NUMBER", "weight of those that did, in eggs"),
                Input.needed("beta", "NUMBER", "weight of those that did not, in eggs"),
                Input.optional("at-least", "N", "also answer the chance of this many or more"));
    }

    @Override
    public Answer answer(Given given) {
        long trials = given.neededWhole("trials");
        if (trials < 0 || trials > MOST_TRIALS) {
            throw given.wrong("trials", trials + " is outside 0 to " + MOST_TRIALS + " eggs.");
        }
        var counts = new BetaBinomial(Math.toIntExact(trials), given.neededNumber("alpha"), given.neededNumber("beta"))
                .counts();
        var answer = Answer.of()
                .with("mean", counts.mean())
                .with("variance", counts.variance())
                .with("q025", (long) counts.quantile(0.025))
                .with("q10", (long) counts.quantile(0.1))
                .with("q50", (long) counts.quantile(0.5))
                .with("q90", (long) counts.quantile(0.9))
                .with("q975", (long) counts.quantile(0.975));
        var atLeast = given.whole("at-least");
        return atLeast.isEmpty()
                ? answer
                : answer.with("at_least_probability", counts.atLeast(whole(given, atLeast.get(), trials)));
    }

    /** One more than all is as impossible as any larger number. */
    private static int whole(Given given, long atLeast, long trials) {
        if (atLeast < 0) {
            throw given.wrong("at-least", atLeast + " is less than 0.");
        }
        return Math.toIntExact(Math.min(atLeast, trials + 1));
    }
}
