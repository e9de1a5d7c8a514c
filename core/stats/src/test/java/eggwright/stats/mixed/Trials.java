package eggwright.stats.mixed;

import eggwright.stats.ReferenceTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;

/** A published table, made into a model term by term. */
final class Trials {
    private final List<ReferenceTable.Row> rows;
    private final BinomialCounts counts;
    private final List<Term> fixed = new ArrayList<>();
    private final List<Grouping> random = new ArrayList<>();

    private Trials(List<ReferenceTable.Row> rows, BinomialCounts counts) {
        this.rows = rows;
        this.counts = counts;
    }

    static Trials of(String table, String successes, String trials) {
        var rows = ReferenceTable.read("mixed/" + table);
        return new Trials(
                rows,
                new BinomialCounts(
                        rows.stream().mapToInt(r -> (int) r.count(successes)).toArray(),
                        rows.stream()
                                .mapToInt(r -> trials.isEmpty() ? 1 : (int) r.count(trials))
                                .toArray()));
    }

    Trials number(String column) {
        fixed.add(new Term.Numbers(
                column, rows.stream().mapToDouble(r -> r.number(column)).toArray()));
        return this;
    }

    Trials category(String column) {
        var levels = rows.stream().map(r -> r.text(column)).distinct().sorted().toList();
        fixed.add(new Term.Category(
                column,
                rows.stream().mapToInt(r -> levels.indexOf(r.text(column))).toArray(),
                levels));
        return this;
    }

    Trials interaction() {
        fixed.add(new Term.Interaction(fixed.get(0), fixed.get(1)));
        return this;
    }

    Trials random(String... columns) {
        Function<ReferenceTable.Row, String> name = row ->
                String.join(":", java.util.Arrays.stream(columns).map(row::text).toList());
        var levels = new LinkedHashMap<String, Integer>();
        int[] levelOfRow = rows.stream()
                .mapToInt(row -> levels.computeIfAbsent(name.apply(row), n -> levels.size()))
                .toArray();
        random.add(new Grouping(String.join(":", columns), levelOfRow, List.copyOf(levels.keySet())));
        return this;
    }

    MixedModel model() {
        return new MixedModel(counts, fixed, random);
    }
}
