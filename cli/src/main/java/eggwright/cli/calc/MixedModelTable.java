package eggwright.cli.calc;

import eggwright.cli.csv.Column;
import eggwright.cli.csv.ColumnTable;
import eggwright.stats.mixed.BinomialCounts;
import eggwright.stats.mixed.Grouping;
import eggwright.stats.mixed.MixedModel;
import eggwright.stats.mixed.Term;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/** Makes a model of a table's columns. */
final class MixedModelTable {
    private static final int MOST_KINDS = 500;

    private final ColumnTable table;
    private final MixedModelRequest request;

    MixedModelTable(ColumnTable table, MixedModelRequest request) {
        this.table = table;
        this.request = request;
    }

    MixedModel model() {
        var terms = new LinkedHashMap<String, Term>();
        request.fixed().forEach(name -> terms.put(name, term(table.column(name))));
        var fixed = new ArrayList<>(terms.values());
        for (var two : request.interactions()) {
            fixed.add(new Term.Interaction(
                    Objects.requireNonNull(terms.get(two.getFirst())),
                    Objects.requireNonNull(terms.get(two.getLast()))));
        }
        return new MixedModel(
                counts(), fixed, request.random().stream().map(this::grouping).toList());
    }

    private BinomialCounts counts() {
        var rates = Names.rates(table, request.successes(), request.trials());
        return new BinomialCounts(
                rates.stream().mapToInt(rate -> (int) rate.count()).toArray(),
                rates.stream().mapToInt(rate -> (int) rate.of()).toArray());
    }

    private Term term(Column column) {
        if (!request.categorical().contains(column.name()) && column.isNumeric()) {
            return new Term.Numbers(column.name(), column.numbers());
        }
        int kinds = column.words().size();
        if (kinds == 1) {
            throw table.refused("has \"" + column.words().getFirst() + "\" in every row of column \"" + column.name()
                    + "\", so that its effect cannot be told. Leave it out.");
        }
        if (kinds > MOST_KINDS) {
            throw table.refused("has " + kinds + " different words in column \"" + column.name()
                    + "\", too many to have a coefficient each (" + MOST_KINDS + " at most). Name it in --random.");
        }
        var sorted = column.words().stream().sorted().toList();
        int[] place = column.words().stream().mapToInt(sorted::indexOf).toArray();
        return new Term.Category(
                column.name(),
                IntStream.of(column.wordOfRow()).map(word -> place[word]).toArray(),
                sorted);
    }

    private Grouping grouping(String random) {
        var columns = MixedModelRequest.columnsOf(random);
        boolean ownRows = columns.size() < random.split("\\+", -1).length;
        if (ownRows) {
            return new Grouping(
                    random,
                    IntStream.range(0, table.rows()).toArray(),
                    IntStream.rangeClosed(1, table.rows())
                            .mapToObj(Integer::toString)
                            .toList());
        }
        var first = table.column(columns.getFirst());
        int[] levels = first.wordOfRow();
        List<String> names = first.words();
        for (var next : columns.subList(1, columns.size())) {
            var column = table.column(next);
            Map<Long, Integer> seen = new HashMap<>();
            var joined = new ArrayList<String>();
            int[] both = new int[levels.length];
            for (int row = 0; row < both.length; row++) {
                int one = levels[row];
                int other = column.wordOfRow()[row];
                var at = seen.get((long) one << Integer.SIZE | other);
                if (at == null) {
                    at = joined.size();
                    seen.put((long) one << Integer.SIZE | other, at);
                    joined.add(names.get(one) + "+" + column.words().get(other));
                }
                both[row] = at;
            }
            levels = both;
            names = joined;
        }
        return new Grouping(random, levels, names);
    }
}
