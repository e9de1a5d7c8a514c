package eggwright.stats.deathcurve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.units.OutOfRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Kuurman, Bailey, Koops and Grossman 2001, Poult. Sci. 80:710: 0.77 early, mean 2.6 and 17.4, deviations 3.3 and 2.0 days. */
class TwoPhaseCurveTest {
    /** Shapes and scales matching the printed means and deviations, as the reference worked them out. */
    private static final TwoPhaseCurve KUURMAN = new TwoPhaseCurve(
            0.086, 0.77, new Weibull(0.79492, 2.28428), new Weibull(10.49474, 18.25299), Set.of(), 21, 0, true);

    /** SciPy's digits, and the derived shapes' five figures. */
    private static final double AS_PRINTED = 2e-5;

    @Test
    void weibull_agreesWithSciPy() {
        int checked = 0;
        for (var row : ReferenceTable.read("deathcurve/embryo_mortality_weibull.csv")) {
            if (row.text("row_kind").equals("exact_weibull")) {
                var curve = new Weibull(row.number("weibull_shape"), row.number("weibull_scale_day"));
                double day = row.number("incubation_day");
                assertEquals(row.number("cumulative_fraction_of_deaths"), curve.diedBy(day), 1e-8);
                assertEquals(row.number("density_per_day"), curve.density(day), 1e-8);
                assertEquals(row.number("mean_day"), curve.meanDay(), 1e-6);
                assertEquals(row.number("sd_day"), curve.deviationDays(), 1e-6);
                checked++;
            }
            if (row.text("row_kind").equals("computed_mixture")
                    && row.text("quantity_asked").equals("F(t), f(t)")) {
                double day = row.number("incubation_day");
                assertEquals(
                        row.number("cumulative_fraction_of_deaths"),
                        KUURMAN.earlyWeight() * KUURMAN.early().diedBy(day)
                                + (1 - KUURMAN.earlyWeight()) * KUURMAN.late().diedBy(day),
                        AS_PRINTED);
                checked++;
            }
        }
        assertTrue(checked > 12, "values checked: " + checked);
        assertEquals(2.6, KUURMAN.early().meanDay(), 1e-4);
        assertEquals(3.3, KUURMAN.early().deviationDays(), 1e-4);
        assertEquals(17.4, KUURMAN.late().meanDay(), 1e-4);
        assertEquals(2.0, KUURMAN.late().deviationDays(), 1e-4);
    }

    /** By hand: by day 10, 1 - exp(-10) of the early wave have died, and 1 - exp(-1) of the late. */
    @Test
    void earlyShare_isOfThoseThatDieByTheLastDay() {
        var curve = new TwoPhaseCurve(0.1, 0.5, new Weibull(1, 1), new Weibull(1, 10), Set.of(), 10, 0, true);
        assertEquals(0.999954600 / (0.999954600 + 0.632120559), curve.earlyShare(), 1e-9);
        var late = new TwoPhaseCurve(0.1, 0.5, new Weibull(1, 1), new Weibull(1, 10), Set.of(), 1000, 0, true);
        assertEquals(0.5, late.earlyShare(), 1e-9);
    }

    /** Counts in proportion to the curve itself, day by day: nothing is left to luck. */
    @Test
    void curve_isFoundAgain_whenCountsAreItsOwn() {
        var counts = new ArrayList<DeathInterval>();
        double before = 0;
        for (int day = 1; day <= 21; day++) {
            double now = KUURMAN.diedBy(day);
            counts.add(new DeathInterval(day - 1.0, day, Math.round(1e8 * (now - before))));
            before = now;
        }
        counts.add(new DeathInterval(21, Double.POSITIVE_INFINITY, 300_000_000));
        var found = TwoPhaseCurve.of(counts);
        assertTrue(found.converged());
        assertEquals(0.25, found.deathShare(), 1e-6);
        assertEquals(0.77, found.earlyWeight(), 1e-4);
        assertEquals(2.6, found.early().meanDay(), 1e-3);
        assertEquals(3.3, found.early().deviationDays(), 1e-3);
        assertEquals(17.4, found.late().meanDay(), 1e-3);
        assertEquals(2.0, found.late().deviationDays(), 1e-3);
    }

    /** As many dead embryos as theirs (0.086 of 11,254 / 0.299 eggs), drawn by chance and sorted into break-out classes. */
    @Test
    void curve_isFoundAgain_fromDrawnDeathsInClasses() {
        var random = new Random(20010710);
        int[][] classes = {
            {0, 1}, {1, 2}, {2, 3}, {3, 4}, {4, 6}, {6, 10}, {10, 14}, {14, 16}, {16, 17}, {17, 18}, {18, 19}, {19, 21}
        };
        long[] dead = new long[classes.length];
        for (int egg = 0; egg < 3237; egg++) {
            double drawn = random.nextDouble();
            int at = 0;
            while (KUURMAN.diedBy(classes[at][1]) < drawn) {
                at++;
            }
            dead[at]++;
        }
        var counts = new ArrayList<DeathInterval>();
        for (int i = 0; i < classes.length; i++) {
            counts.add(new DeathInterval(classes[i][0], classes[i][1], dead[i]));
        }
        counts.add(new DeathInterval(21, Double.POSITIVE_INFINITY, 30_000));
        var found = TwoPhaseCurve.of(counts);
        assertTrue(found.converged(), found::toString);
        // Within some three of their own errors: 0.77 of 3,237 has one of 0.008, the late mean 2.0 / sqrt(745) of 0.07.
        assertEquals(0.77, found.earlyWeight(), 0.025);
        assertEquals(2.6, found.early().meanDay(), 0.3);
        assertEquals(17.4, found.late().meanDay(), 0.25);
        assertEquals(2.0, found.late().deviationDays(), 0.25);
    }

    /** No point of a fine search about it is likelier. */
    @Test
    void curve_isTheLikeliest_ofTheBreakOutSets() {
        for (var id : List.of("IC_breakout_fresh", "IC_breakout_stored")) {
            var intervals = TurnbullReferenceTest.intervals(id);
            var found = TwoPhaseCurve.of(intervals);
            assertEquals(found.logLikelihood(), logLikelihood(found, intervals), 1e-9);
            // Their overlapping classes all hold one short time: a wave without width there would be likelier.
            assertTrue(found.heldNarrow().size() == 1 && found.converged(), found::toString);
            assertEquals(
                    TwoPhaseCurve.NARROWEST_DAYS,
                    Math.min(found.early().deviationDays(), found.late().deviationDays()),
                    1e-5);
            var random = new Random(7);
            for (int i = 0; i < 5000; i++) {
                var near = new TwoPhaseCurve(
                        found.deathShare(),
                        Math.clamp(found.earlyWeight() + 0.1 * random.nextGaussian(), 0, 1),
                        moved(found.early(), random),
                        moved(found.late(), random),
                        Set.of(),
                        found.lastDay(),
                        0,
                        true);
                boolean isAllowed = near.early().deviationDays() >= TwoPhaseCurve.NARROWEST_DAYS
                        && near.late().deviationDays() >= TwoPhaseCurve.NARROWEST_DAYS;
                assertTrue(
                        !isAllowed || logLikelihood(near, intervals) <= found.logLikelihood() + 1e-9, near::toString);
            }
            assertTrue(found.logLikelihood() <= Turnbull.of(intervals).logLikelihood(), "no curve beats the free one");
        }
    }

    @Test
    void curve_refusesFewClasses() {
        assertThrows(
                OutOfRange.class,
                () -> TwoPhaseCurve.of(List.of(new DeathInterval(0, 4, 12), new DeathInterval(18, 24, 20))));
    }

    private static Weibull moved(Weibull from, Random random) {
        return new Weibull(
                from.shape() * Math.exp(0.1 * random.nextGaussian()),
                from.scaleDays() * Math.exp(0.1 * random.nextGaussian()));
    }

    private static double logLikelihood(TwoPhaseCurve curve, List<DeathInterval> intervals) {
        return intervals.stream()
                .mapToDouble(each -> each.count()
                        * Math.log(
                                each.survived()
                                        ? 1 - curve.deathShare() * curve.diedBy(each.fromDay())
                                        : curve.deathShare()
                                                * (curve.diedBy(each.toDay()) - curve.diedBy(each.fromDay()))))
                .sum();
    }
}
