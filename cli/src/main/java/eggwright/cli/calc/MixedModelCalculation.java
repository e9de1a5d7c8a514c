package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.csv.ColumnTable;
import eggwright.cli.voice.Refused;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What makes rates differ, and which groups scatter by how much. */
final class MixedModelCalculation implements FileCalculation {
    private static final int LAPLACE = 1;
    private static final int MOST_NODES = 100;

    @Override
    public String name() {
        return "mixed-model";
    }

    @Override
    public String about() {
        return "What makes counts of so many in so many differ: fixed effects on the logit, and groups that scatter. "
                + "By maximum likelihood, Laplace's approximation.";
    }

    @Override
    public String example() {
        return "eggwright calc mixed-model trays.csv --successes fertile --trials eggs --fixed storage_days,machine "
                + "--random pen,week,row";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("successes", "COL", "the column of those that did, as fertile eggs"),
                Input.optional("trials", "COL", "the column of those that could have; without it successes are 0 or 1"),
                Input.optional(
                        "fixed",
                        "COL,…",
                        "columns that the chance may hang on: numbers as a line, words each for itself"),
                Input.optional(
                        "interaction",
                        "COL,COL",
                        "two columns of which the effect of one may hang on the other; may be given again"),
                Input.optional(
                        "random",
                        "COL,…",
                        "columns whose groups scatter; a+b groups by both together, row gives each row its own group"),
                Input.optional("categorical", "COL,…", "columns of numbers that are to be read as words"),
                Input.optional(
                        "quadrature",
                        "N",
                        "with one random column: adaptive quadrature with so many nodes, instead of Laplace"),
                Input.optional(
                        "profile", "SHARE", "also answer intervals of the standard deviations, as 0.95, by profile"));
    }

    @Override
    public Set<String> repeatable() {
        return Set.of("interaction");
    }

    @Override
    public Answer answer(Path file, Given given) {
        var request = MixedModelRequest.of(given);
        long nodes = given.whole("quadrature").orElse((long) LAPLACE);
        if (nodes < 1 || nodes > MOST_NODES) {
            throw given.wrong("quadrature", nodes + " is outside 1 to " + MOST_NODES + " nodes.");
        }
        if (nodes > 1 && request.random().size() != 1) {
            throw given.wrong(
                    "quadrature",
                    nodes + " nodes need exactly one random column, and there are "
                            + request.random().size() + ". Leave --quadrature out, or name one.");
        }
        var profile = given.number("profile");
        if (profile.isPresent() && !(profile.get() >= 0.5 && profile.get() <= 0.999)) {
            throw given.wrong("profile", profile.get() + " is outside 0.5 to 0.999.");
        }
        var table = ColumnTable.read(file, new LinkedHashSet<>(request.columns()), Set.of());
        var model = new MixedModelTable(table, request).model();
        if (profile.isPresent()) {
            var profiled = model.profiled((int) nodes, profile.get());
            return MixedModelAnswer.of(profiled.outcome(), profiled.deviations(), this::refused);
        }
        return MixedModelAnswer.of(model.fit((int) nodes), List.of(), this::refused);
    }

    private Refused refused(String why) {
        return new Refused(why + " Nothing was worked out.");
    }
}
