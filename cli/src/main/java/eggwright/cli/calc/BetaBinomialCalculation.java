package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.csv.ColumnTable;
import eggwright.stats.overdispersion.BetaBinomialFit;
import eggwright.units.Rate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** A mean share and how much trays scatter about it, group by group. */
final class BetaBinomialCalculation implements FileCalculation {
    @Override
    public String name() {
        return "beta-binomial";
    }

    @Override
    public String about() {
        return "The mean share of rows of so many in so many, and how alike those of one row are beyond it "
                + "(overdispersion, 0 is luck alone), by maximum likelihood.";
    }

    @Override
    public String example() {
        return "eggwright calc beta-binomial trays.csv --successes fertile --trials eggs --by pen";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed("successes", "COL", "the column of those that did, as fertile eggs"),
                Input.needed("trials", "COL", "the column of those that could have, as eggs set"),
                Input.optional("by", "COL", "fit each group of this column for itself"));
    }

    @Override
    public Answer answer(Path file, Given given) {
        var successes = given.needed("successes");
        var trials = given.needed("trials");
        var by = given.text("by");
        var wanted = new ArrayList<>(List.of(successes, trials));
        by.ifPresent(wanted::add);
        var table = ColumnTable.read(file, wanted, Set.of());
        var rates = Names.rates(table, successes, List.of(trials));
        if (by.isEmpty()) {
            return answer(Answer.of(), rates);
        }
        var groups = new TreeMap<String, List<Rate>>();
        var column = table.column(by.get());
        for (int row = 0; row < rates.size(); row++) {
            groups.computeIfAbsent(column.words().get(column.wordOfRow()[row]), word -> new ArrayList<>())
                    .add(rates.get(row));
        }
        var answers = new ArrayList<Value>();
        groups.forEach((word, own) ->
                answers.add(new Value.Group(answer(Answer.of().with("group", word), own))));
        return Answer.of().with("by", by.get()).with("groups", new Value.Many(answers));
    }

    private static Answer answer(Answer answer, List<Rate> rates) {
        if (rates.stream().allMatch(Rate::isEmpty)) {
            return numbers(answer, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN)
                    .with("not_estimable", "no trials were counted");
        }
        return switch (BetaBinomialFit.of(rates)) {
            case BetaBinomialFit.Scattered fit -> {
                double eggs = 1 / fit.rho() - 1;
                yield numbers(
                        answer, fit.mean(), fit.rho(), fit.mean() * eggs, (1 - fit.mean()) * eggs, fit.logLikelihood());
            }
            case BetaBinomialFit.NoMoreThanLuck fit ->
                numbers(answer, fit.mean(), 0, Double.NaN, Double.NaN, fit.logLikelihood())
                        .with(
                                "not_estimable",
                                "rows scatter by no more than luck, so that alpha and beta have no bound");
            case BetaBinomialFit.NoneOrAll fit ->
                numbers(answer, fit.mean(), Double.NaN, Double.NaN, Double.NaN, fit.logLikelihood())
                        .with("not_estimable", "none or all were successes, so that nothing can be said of scatter");
        };
    }

    private static Answer numbers(
            Answer answer, double mean, double scatter, double alpha, double beta, double logLikelihood) {
        return answer.with("mean", mean)
                .with("overdispersion", scatter)
                .with("alpha", alpha)
                .with("beta", beta)
                .with("log_likelihood", logLikelihood);
    }
}
