package eggwright.bench.stats;

import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Intervals;
import eggwright.stats.interval.ProportionInterval;
import eggwright.units.Rate;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One interval round one tray's rate: a report of a season draws a few thousand. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class IntervalBenchmark {
    private final Rate tray = new Rate(51, 54);

    /** Which interval; Wilson's is the one beside every rate. */
    @Param({"WILSON", "JEFFREYS", "CLOPPER_PEARSON"})
    public IntervalMethod method;

    /** Of 51 in 54. */
    @Benchmark
    public ProportionInterval ofOneTray() {
        return Intervals.of(tray, method, 0.95);
    }
}
