package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.voice.Refused;
import eggwright.stats.mixed.FixedEffect;
import eggwright.stats.mixed.GroupEffects;
import eggwright.stats.mixed.MixedOutcome;
import eggwright.stats.mixed.ProfiledOutcome.DeviationInterval;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A fit as it is answered. */
final class MixedModelAnswer {
    private static final int MOST_NAMED = 5;

    private MixedModelAnswer() {}

    /** The answer of a fit; a refusal where there is none. */
    static Answer of(MixedOutcome outcome, List<DeviationInterval> intervals, Function<String, Refused> refused) {
        return switch (outcome) {
            case MixedOutcome.Fitted fit -> fitted(fit, intervals);
            case MixedOutcome.NoneOrAll(boolean all) ->
                throw refused.apply((all ? "All" : "None") + " of the trials of all rows were successes, so that no "
                        + "effect has a finite size. For how sure that share is, use calc interval.");
            case MixedOutcome.Separated(List<String> terms) ->
                throw refused.apply((terms.isEmpty() ? "The fixed columns part" : quoted(terms) + " part" + s(terms))
                        + " the rows where all were successes from those where none was, so that no finite size fits "
                        + "best. Leave the column out, join rare words, or name the column in --random.");
            case MixedOutcome.Unbounded(String grouping) ->
                throw refused.apply("Within each group of \"" + grouping
                        + "\" all or none were successes, so that no finite scatter fits best. Leave it out.");
        };
    }

    private static String quoted(List<String> terms) {
        var named =
                terms.stream().limit(MOST_NAMED).map(term -> "\"" + term + "\"").toList();
        return terms.size() <= MOST_NAMED
                ? String.join(" and ", named)
                : String.join(", ", named) + " and " + (terms.size() - MOST_NAMED) + " more";
    }

    private static String s(List<String> terms) {
        return terms.size() == 1 ? "s" : "";
    }

    private static Answer fitted(MixedOutcome.Fitted fit, List<DeviationInterval> intervals) {
        var random = new ArrayList<Value>();
        for (int g = 0; g < fit.random().size(); g++) {
            random.add(new Value.Group(
                    group(fit.random().get(g), intervals.isEmpty() ? List.of() : intervals.subList(g, g + 1))));
        }
        var answer = Answer.of()
                .with(
                        "fixed",
                        new Value.Many(fit.fixed().stream()
                                .<Value>map(effect -> new Value.Group(fixed(effect)))
                                .toList()))
                .with("random", new Value.Many(random))
                .with("log_likelihood", fit.logLikelihood())
                .with("rows", fit.rows())
                .with("iterations", fit.iterations())
                .with("converged", new Value.Truth(fit.converged()))
                .with("singular", new Value.Truth(fit.singular()));
        return fit.empty().isEmpty() ? answer : answer.with("not_estimable", Value.texts(fit.empty()));
    }

    private static Answer fixed(FixedEffect effect) {
        return Answer.of()
                .with("term", effect.term())
                .with("estimate", effect.estimate())
                .with("standard_error", effect.standardError())
                .with("z", effect.z())
                .with("p", effect.chance());
    }

    private static Answer group(GroupEffects group, List<DeviationInterval> interval) {
        var answer = Answer.of()
                .with("group", group.grouping().name())
                .with("standard_deviation", group.standardDeviation());
        for (var ends : interval) {
            answer = answer.with("low", ends.low()).with("high", ends.high());
        }
        var levels = new ArrayList<Value>(group.effects().length);
        for (int level = 0; level < group.effects().length; level++) {
            levels.add(new Value.Group(new Answer(List.of(
                    new Answer.Field(
                            "level", new Value.Text(group.grouping().levels().get(level))),
                    new Answer.Field("effect", new Value.Real(group.effects()[level])),
                    new Answer.Field("standard_deviation", new Value.Real(group.deviations()[level]))))));
        }
        return answer.with("levels", new Value.Many(levels));
    }
}
