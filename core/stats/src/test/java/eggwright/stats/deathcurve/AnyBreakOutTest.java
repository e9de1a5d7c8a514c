package eggwright.stats.deathcurve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever classes a break-out is sorted into, the curves are the likeliest and their chances whole. */
class AnyBreakOutTest {
    private static final int BREAK_OUTS = 150;

    @ParameterizedTest
    @ValueSource(ints = {1, 4, 12, 40})
    void steps_areTheLikeliest(int classes) {
        for (long seed = 0; seed < BREAK_OUTS; seed++) {
            var intervals = drawn(new Random(100L * classes + seed), classes);
            var curve = Turnbull.of(intervals);
            assertEquals(
                    1,
                    curve.steps().stream().mapToDouble(StepCurve.Step::chance).sum(),
                    1e-9);
            // At the top no further chance anywhere gains: the sum of count over likelihood is at most all.
            double all = intervals.stream().mapToLong(DeathInterval::count).sum();
            for (var range : new Innermost(intervals).ranges) {
                double sum = 0;
                for (var interval : intervals) {
                    if (holds(interval, range.fromDay(), range.toDay())) {
                        sum += interval.count() / likely(curve, interval);
                    }
                }
                assertTrue(sum <= all * (1 + 1e-7), "seed " + seed + ": " + sum / all);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {6, 12, 40})
    void twoWaves_areNeverLikelierThanTheFreeCurve(int classes) {
        for (long seed = 0; seed < 30; seed++) {
            var intervals = drawn(new Random(7000L * classes + seed), classes).stream()
                    .filter(each -> each.fromDay() < each.toDay())
                    .toList();
            try {
                var curve = TwoPhaseCurve.of(intervals);
                assertTrue(curve.logLikelihood() <= Turnbull.of(intervals).logLikelihood() + 1e-6);
                assertTrue(curve.early().meanDay() <= curve.late().meanDay());
            } catch (OutOfRange few) {
                assertTrue(String.valueOf(few.getMessage()).length() > 20);
            }
        }
    }

    private static List<DeathInterval> drawn(Random random, int classes) {
        var intervals = new ArrayList<DeathInterval>();
        for (int i = 0; i < classes; i++) {
            int from = random.nextInt(24);
            int kind = random.nextInt(6);
            double to = kind == 0 ? Double.POSITIVE_INFINITY : kind == 1 ? from : from + 1 + random.nextInt(6);
            intervals.add(new DeathInterval(to == 0 ? 1 : from, to == 0 ? 2 : to, 1 + random.nextInt(40)));
        }
        return intervals;
    }

    private static double likely(StepCurve curve, DeathInterval interval) {
        return curve.steps().stream()
                .filter(step -> holds(interval, step.fromDay(), step.toDay()))
                .mapToDouble(StepCurve.Step::chance)
                .sum();
    }

    private static boolean holds(DeathInterval interval, double from, double to) {
        boolean starts = from == to
                ? interval.fromDay() < from || (interval.isOneDay() && interval.fromDay() == from)
                : interval.fromDay() <= from;
        return starts && interval.toDay() >= to;
    }
}
