package eggwright.bench.book;

import eggwright.book.entry.Kept;
import eggwright.book.fold.Ledger;
import eggwright.book.picture.Picture;
import eggwright.invented.BigBook;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * One more entry in a book that is folded already; aim: under 1 ms with the picture. Each call adds {@value #MORE}
 * entries one by one to a book folded afresh, which is not counted.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 10, time = 1)
@Measurement(iterations = 11, time = 1)
@Fork(value = 1, jvmArgsAppend = "-Xmx3g")
public class OneMoreBenchmark {
    private static final int MORE = 500;

    /** How many entries stand in the book before. */
    @Param({"20000", "200000"})
    public int entries;

    /** Which entries come one by one: the newest, or some from all over the book, as a phone brings that was away. */
    @Param
    public Arrival arrival = Arrival.NEWEST;

    /** When an entry comes in. */
    public enum Arrival {
        /** After all that happened before. */
        NEWEST,
        /** Long after others that happened later. */
        LATE
    }

    private final List<Kept> before = new ArrayList<>();
    private final List<Kept> more = new ArrayList<>();
    private Ledger ledger = new Ledger();

    /** Draws the book, and says which entries come late. */
    @Setup
    public void draw() {
        var book = BigBook.of(entries, 1);
        int each = entries / MORE;
        for (int i = 0; i < entries; i++) {
            var late = switch (arrival) {
                case NEWEST -> i >= entries - MORE;
                case LATE -> i % each == each / 2;
            };
            (late ? more : before).add(book.get(i));
        }
    }

    /** Folds what came before. */
    @Setup(Level.Invocation)
    public void fold() {
        ledger = Ledger.of(before);
    }

    /** The entry taken in, and the picture asked for, as the desk does after each form. */
    @Benchmark
    @OperationsPerInvocation(MORE)
    public void addAndPicture(Blackhole pictures) {
        for (var kept : more) {
            ledger.add(kept);
            Picture picture = ledger.picture();
            pictures.consume(picture);
        }
    }

    /** The entry taken in only. */
    @Benchmark
    @OperationsPerInvocation(MORE)
    public Ledger add() {
        for (var kept : more) {
            ledger.add(kept);
        }
        return ledger;
    }
}
