package eggwright.cli.calc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A model as it was asked for, by names of columns.
 *
 * @param trials none where each row is one trial
 * @param fixed with those that stand in an interaction
 * @param interactions two columns each
 * @param random as typed: a column, columns joined by +, or row
 */
record MixedModelRequest(
        String successes,
        List<String> trials,
        List<String> fixed,
        List<List<String>> interactions,
        List<String> random,
        Set<String> categorical) {
    /** What gives every row its own level. */
    static final String ROW = "row";

    MixedModelRequest {
        trials = List.copyOf(trials);
        fixed = List.copyOf(fixed);
        interactions = List.copyOf(interactions);
        random = List.copyOf(random);
        categorical = Set.copyOf(categorical);
    }

    static MixedModelRequest of(Given given) {
        var interactions = interactions(given);
        var fixed = new LinkedHashSet<>(Names.listed(given, "fixed"));
        interactions.forEach(fixed::addAll);
        return new MixedModelRequest(
                given.needed("successes"),
                given.text("trials").stream().toList(),
                List.copyOf(fixed),
                interactions,
                Names.listed(given, "random"),
                Set.copyOf(Names.listed(given, "categorical")));
    }

    private static List<List<String>> interactions(Given given) {
        var all = new ArrayList<List<String>>();
        for (var text :
                given.text("interaction").map(typed -> typed.split(";", -1)).orElse(new String[0])) {
            var two = Names.split(given, "interaction", text);
            if (two.size() != 2) {
                throw given.wrong(
                        "interaction",
                        "\"" + text + "\" names " + two.size()
                                + " columns. Name two, as storage_days,machine, and give "
                                + "the option again for more.");
            }
            if (all.stream().anyMatch(other -> Set.copyOf(other).equals(Set.copyOf(two)))) {
                throw given.wrong("interaction", "\"" + text + "\" is given twice. Give it once.");
            }
            all.add(two);
        }
        return all;
    }

    /** The columns of one random part; row is none. */
    static List<String> columnsOf(String random) {
        return Arrays.stream(random.split("\\+", -1))
                .map(String::strip)
                .filter(name -> !name.equals(ROW))
                .toList();
    }

    /** Every column that is needed. */
    List<String> columns() {
        var columns = new ArrayList<String>();
        columns.add(successes);
        columns.addAll(trials);
        columns.addAll(fixed);
        random.forEach(each -> columns.addAll(columnsOf(each)));
        columns.addAll(categorical);
        return columns;
    }
}
