package eggwright.stats.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.stats.interval.Level;
import eggwright.units.OutOfRange;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpecificAgreementTest {
    private static final double AS_R = 1e-10;

    @ParameterizedTest
    @ValueSource(strings = {"KC07", "KC08", "KC09"})
    void specificAgreement_agreesWithR(String id) {
        var table = Tables.kept(ReferenceTable.ofCase(ReferenceTable.read("agreement/kappa_cohen.csv"), id));
        var expected = ReferenceTable.read("agreement/kappa_cohen_expected.csv");
        var each = table.onEach();
        assertEquals(
                ReferenceTable.answer(expected, id, "positive_agreement").number("value"),
                each.get(0).estimate(),
                AS_R);
        assertEquals(
                ReferenceTable.answer(expected, id, "negative_agreement").number("value"),
                each.get(1).estimate(),
                AS_R);
    }

    /**
     * The paradox: 85 of 100 agree in both tables, yet kappa is .70 and .32, for nearly all of the second are of one
     * sort. Printed in Feinstein and Cicchetti 1990, J. Clin. Epidemiol. 43:543, and Cicchetti and Feinstein 1990, 43:551
     * (from memory).
     */
    @Test
    void specificAgreement_tellsWhatKappaHides_whenNearlyAllAreOfOneSort() {
        var even = Tables.of(new long[] {40, 9}, new long[] {6, 45});
        var uneven = Tables.of(new long[] {80, 10}, new long[] {5, 5});
        double halfADigit = 0.5e-2;
        assertEquals(
                0.70,
                assertInstanceOf(Kappa.Estimated.class, Kappa.of(even, 0.95)).kappa(),
                halfADigit);
        assertEquals(
                0.32,
                assertInstanceOf(Kappa.Estimated.class, Kappa.of(uneven, 0.95)).kappa(),
                halfADigit);
        assertEquals(0.84, even.on("c1").estimate(), halfADigit);
        assertEquals(0.86, even.on("c2").estimate(), halfADigit);
        assertEquals(0.91, uneven.on("c1").estimate(), halfADigit);
        assertEquals(0.40, uneven.on("c2").estimate(), halfADigit);
    }

    /** The error is that of the delta method, worked here by differences of 2a/(2a+d) over multinomial counts. */
    @Test
    void standardError_isTheDeltaMethods_worked() {
        double a = 91;
        double d = 13;
        double step = 1e-4;
        double byAgreed = (share(a + step, d) - share(a - step, d)) / (2 * step);
        double byDiffered = (share(a, d + step) - share(a, d - step)) / (2 * step);
        // Multinomial: var of a count x of n is x (1 - x/n), covariance of two -xy/n; n cancels, any will do.
        double n = 600;
        double variance = byAgreed * byAgreed * a * (1 - a / n)
                + byDiffered * byDiffered * d * (1 - d / n)
                - 2 * byAgreed * byDiffered * a * d / n;
        assertEquals(
                Math.sqrt(variance),
                new SpecificAgreement("clear", 91, 13).standardError(),
                1e-8 * Math.sqrt(variance));
    }

    private static double share(double a, double d) {
        return 2 * a / (2 * a + d);
    }

    @Test
    void interval_isTheDeltaMethods_whenEggsAreMany() {
        var many = new SpecificAgreement("clear", 91_000, 13_000);
        var interval = many.interval(0.95);
        double half = Level.normalEnd(0.95) * many.standardError();
        // Wilson's middle moves by about z^2/2n, here 2e-5.
        assertEquals(many.estimate() - half, interval.low(), 3e-5);
        assertEquals(many.estimate() + half, interval.high(), 3e-5);
    }

    @Test
    void interval_keepsItsWidth_whenAllAgreed() {
        var all = new SpecificAgreement("clear", 9, 0);
        assertEquals(1, all.estimate());
        assertEquals(0, all.standardError());
        assertEquals(1, all.interval(0.95).high());
        // Wilson's lower limit of 9 of 9 is n / (n + z^2) = 0.7009, carried over.
        assertEquals(2 * 0.70085 / 1.70085, all.interval(0.95).low(), 1e-5);
        var none = new SpecificAgreement("clear", 0, 9);
        assertEquals(0, none.interval(0.95).low());
        assertTrue(none.interval(0.95).high() > 0.3);
    }

    /** 120 eggs of which 15 % are clear: far fewer than the delta method likes. */
    @Test
    void interval_holdsTheTruthAsOftenAsItSays_overManyTrays() {
        double both = 0.12;
        double one = 0.05;
        double truth = 2 * both / (2 * both + one);
        long seed = 551;
        var random = new SplittableRandom(seed);
        int runs = 4000;
        int held = 0;
        for (int run = 0; run < runs; run++) {
            int agreed = 0;
            int differed = 0;
            for (int egg = 0; egg < 120; egg++) {
                double u = random.nextDouble();
                agreed += u < both ? 1 : 0;
                differed += u >= both && u < both + one ? 1 : 0;
            }
            var interval = new SpecificAgreement("clear", agreed, differed).interval(0.95);
            held += interval.low() <= truth && truth <= interval.high() ? 1 : 0;
        }
        // Three Monte Carlo errors, and a point for counts that are whole.
        assertEquals(0.95, held / (double) runs, 3 * Math.sqrt(0.0475 / runs) + 0.01, "seed " + seed);
    }

    @Test
    void specificAgreement_cannotBeTold_ofAFindingThatNeitherSaw() {
        var none = Tables.of(new long[] {50, 0}, new long[] {0, 0}).on("c2");
        assertTrue(none.isEmpty());
        assertTrue(Double.isNaN(none.estimate()));
        assertThrows(OutOfRange.class, () -> none.interval(0.95));
        var unknown =
                assertThrows(OutOfRange.class, () -> Tables.of(new long[] {50}).on("rot"));
        assertTrue(unknown.toString().contains("There are c1"), unknown.toString());
    }
}
