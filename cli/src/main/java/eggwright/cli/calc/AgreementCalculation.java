package eggwright.cli.calc;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.cli.csv.CountTable;
import eggwright.cli.voice.Refused;
import eggwright.sheet.problem.Near;
import eggwright.stats.agreement.AgreementTable;
import eggwright.stats.agreement.Kappa;
import eggwright.stats.agreement.SpecificAgreement;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** How far two looks at the same eggs agree. */
final class AgreementCalculation implements Calculation {
    private static final String ALL = "all";

    @Override
    public String name() {
        return "agreement";
    }

    @Override
    public String about() {
        return "How far two looks at the same eggs agree beyond luck: Cohen's kappa with its limits. "
                + "Where nearly all eggs are live kappa is low by nature: read it beside --categories all.";
    }

    @Override
    public String example() {
        return "eggwright calc agreement --table two-looks.csv --categories all";
    }

    @Override
    public List<Input> inputs() {
        return List.of(
                Input.needed(
                        "table",
                        "FILE.csv",
                        "counts of eggs; the first row and the first column name the categories, as live, clear, dead"),
                Input.optional("level", "SHARE", "share of such limits that hold the truth; 0.95 where not said"),
                Input.optional(
                        "categories",
                        "WORDS",
                        "also answer how often one look says so when the other does, for these categories "
                                + "(clear,dead) or for all"));
    }

    @Override
    public Answer answer(Given given) {
        var table = CountTable.read(path(given));
        double level = given.number("level").orElse(0.95);
        var answer = kappa(Kappa.of(table, level));
        var asked = given.text("categories");
        if (asked.isEmpty()) {
            return answer;
        }
        var each = chosen(given, asked.get(), table).stream()
                .<Value>map(category -> new Value.Group(specific(table.on(category), level)))
                .toList();
        return answer.with("by_category", new Value.Many(each));
    }

    private static Path path(Given given) {
        var typed = given.needed("table");
        try {
            return Path.of(typed);
        } catch (InvalidPathException unfit) {
            throw given.wrong("table", typed, "the name of a file", "two-looks.csv");
        }
    }

    private static Answer kappa(Kappa kappa) {
        return switch (kappa) {
            case Kappa.Estimated it ->
                numbers(it.kappa(), it.standardError(), it.low(), it.high(), it.observed(), it.expected());
            case Kappa.Undefined it ->
                numbers(Double.NaN, Double.NaN, Double.NaN, Double.NaN, it.observed(), it.expected())
                        .with(
                                "not_estimable",
                                "both looks called every egg the same one thing, so that kappa is 0 / 0");
        };
    }

    private static Answer numbers(
            double kappa, double error, double low, double high, double observed, double expected) {
        return Answer.of()
                .with("kappa", kappa)
                .with("standard_error", error)
                .with("low", low)
                .with("high", high)
                .with("observed_agreement", observed)
                .with("expected_agreement", expected);
    }

    private static List<String> chosen(Given given, String asked, AgreementTable table) {
        if (asked.equals(ALL)) {
            return table.categories();
        }
        var words = Arrays.stream(asked.split(",", -1)).map(String::strip).toList();
        for (var word : words) {
            if (!table.categories().contains(word)) {
                throw unknown(given, word, table);
            }
        }
        return words;
    }

    private static Refused unknown(Given given, String word, AgreementTable table) {
        return given.wrong(
                "categories",
                "the table has no category \"" + word + "\"."
                        + Near.to(word, table.categories())
                                .map(near -> " Did you mean \"" + near + "\"?")
                                .orElse("")
                        + " There are " + String.join(", ", table.categories()) + "; \"" + ALL + "\" means each.");
    }

    private static Answer specific(SpecificAgreement agreement, double level) {
        var answer = Answer.of()
                .with("category", agreement.category())
                .with("agreed", agreement.agreed())
                .with("differed", agreement.differed())
                .with("estimate", agreement.estimate())
                .with("standard_error", agreement.standardError());
        if (agreement.isEmpty()) {
            return answer.with("low", Double.NaN)
                    .with("high", Double.NaN)
                    .with("not_estimable", "neither look called any egg so");
        }
        var limits = agreement.interval(level);
        return answer.with("low", limits.low()).with("high", limits.high());
    }
}
