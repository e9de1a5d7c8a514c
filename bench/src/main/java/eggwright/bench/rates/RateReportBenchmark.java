package eggwright.bench.rates;

import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.invented.BigBook;
import eggwright.rates.Contrasts;
import eggwright.rates.Dimension;
import eggwright.rates.RateReport;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One report over a large book. Its peer only adds up the eggs by fate. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RateReportBenchmark {
    /** How many entries. */
    @Param({"20000"})
    public int entries;

    private Picture picture;

    /** Folds the book once. */
    @Setup
    public void fold() {
        picture = Ledger.of(BigBook.of(entries, 1)).picture();
    }

    /** By pen. */
    @Benchmark
    public RateReport byPen() {
        return RateReport.of(picture, Dimension.PEN);
    }

    /** By section, for which every tray's stays are followed. */
    @Benchmark
    public RateReport bySection() {
        return RateReport.of(picture, Dimension.SECTION);
    }

    /** Each pen against the rest. */
    @Benchmark
    public Contrasts contrastsByPen() {
        return Contrasts.fertility(picture, Dimension.PEN);
    }

    /** The peer: eggs added up by fate. */
    @Benchmark
    public int eggsCounted() {
        return picture.accounts().stream()
                .flatMap(a -> a.fates().stream())
                .mapToInt(f -> f.eggs())
                .sum();
    }
}
