package eggwright.trade.level;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import eggwright.trade.Range;
import org.junit.jupiter.api.Test;

class BenchmarksTest {
    @Test
    void benchmarks_allNameTheirSourceAndDenominator() {
        assertEquals(47, Benchmarks.all().size());
        for (var benchmark : Benchmarks.all()) {
            assertFalse(benchmark.sources().isEmpty(), benchmark.category());
            assertFalse(benchmark.denominator().isBlank(), benchmark.category());
        }
    }

    /** Deeming and Wadland 2001, British Poultry Science 42:569: late losses 14.5 and 12.1 % of fertile, mean 13.3. */
    @Test
    void benchmarks_keepThePheasantsLateLosses() {
        var late = Benchmarks.of("embryo dead, late (includes pipped)").getFirst();
        assertEquals(new Range<>(21, 25), late.days());
        assertEquals(new Range<>(13.3, 13.3), late.typicalPct());
        assertEquals(new Range<>(12.1, 12.1), late.goodPct());
    }
}
