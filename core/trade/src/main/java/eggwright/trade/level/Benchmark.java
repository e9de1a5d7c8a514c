package eggwright.trade.level;

import eggwright.trade.Range;
import eggwright.trade.source.Source;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A published level of fertility, hatch or loss.
 *
 * @param category what is counted, in the words of the table
 * @param days days of incubation it covers; null where it is not bound to days
 * @param typicalPct what is commonly met, in percent; null where the source names only a good level
 * @param goodPct what a well-run place reaches, in percent; null where the source names only a typical level
 * @param denominator percent of what
 * @param sources where it stands
 * @param note species, and how the figure was read; may be empty
 */
public record Benchmark(
        String category,
        @Nullable Range<Integer> days,
        @Nullable Range<Double> typicalPct,
        @Nullable Range<Double> goodPct,
        String denominator,
        List<Source> sources,
        String note) {
    public Benchmark {
        sources = List.copyOf(sources);
    }
}
