package eggwright.bench.book;

import eggwright.book.entry.Kept;
import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.invented.BigBook;
import java.util.Comparator;
import java.util.List;
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

/**
 * A whole book folded into a picture; aim: 20,000 entries under 100 ms, 200,000 in no more than ten times as long. Its
 * peer only puts the entries in order.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgsAppend = "-Xmx3g")
public class FoldBenchmark {
    /** How many entries. */
    @Param({"20000", "200000"})
    public int entries;

    private List<Kept> book = List.of();

    /** Draws the book once. */
    @Setup
    public void draw() {
        book = BigBook.of(entries, 1);
    }

    /** All entries at once, and the picture. */
    @Benchmark
    public Picture fold() {
        return Ledger.of(book).picture();
    }

    /** The peer: the entries in the order of happening. */
    @Benchmark
    public List<Kept> inOrder() {
        return book.stream()
                .sorted(Comparator.comparing(Kept::happened)
                        .thenComparing(k -> k.entry().id()))
                .toList();
    }
}
