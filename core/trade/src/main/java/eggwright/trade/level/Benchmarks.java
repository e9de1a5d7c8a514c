package eggwright.trade.level;

import eggwright.trade.Range;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The published levels, in the order of the table. Most are of pheasant, chukar or chicken: the note says which. */
public final class Benchmarks {
    private Benchmarks() {}

    public static List<Benchmark> all() {
        return CsvTable.beside(Benchmarks.class, "/eggwright/trade/benchmarks.csv").rows().stream()
                .map(Benchmarks::read)
                .toList();
    }

    /** Those of one category, as {@code fertility} or {@code hatch of fertile}. */
    public static List<Benchmark> of(String category) {
        return all().stream().filter(b -> b.category().equals(category)).toList();
    }

    private static Benchmark read(Map<String, String> row) {
        return new Benchmark(
                row.getOrDefault("category", ""),
                days(row),
                pct(row.get("typical_pct")),
                pct(row.get("good_pct")),
                row.getOrDefault("denominator", ""),
                Sources.shipped().read(row.getOrDefault("source", "")),
                row.getOrDefault("note", ""));
    }

    private static @Nullable Range<Integer> days(Map<String, String> row) {
        var from = row.get("day_from");
        var to = row.get("day_to");
        return from == null || to == null ? null : new Range<>(Integer.valueOf(from), Integer.valueOf(to));
    }

    private static @Nullable Range<Double> pct(@Nullable String cell) {
        if (cell == null) {
            return null;
        }
        int dash = cell.indexOf('-');
        return dash < 0
                ? new Range<>(Double.valueOf(cell), Double.valueOf(cell))
                : new Range<>(Double.valueOf(cell.substring(0, dash)), Double.valueOf(cell.substring(dash + 1)));
    }
}
