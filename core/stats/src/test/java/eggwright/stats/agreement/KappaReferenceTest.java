package eggwright.stats.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import eggwright.units.OutOfRange;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * R 4.2.2 on the tables of Cohen 1960, Fleiss, Cohen and Everitt 1969, Fleiss's book, Agresti's (two reviewers, two
 * pathologists, couples) and own ones. Sources: SOURCES.md beside the resources.
 */
class KappaReferenceTest {
    /** Closed forms on both sides. */
    private static final double AS_R = 1e-10;

    private static final List<ReferenceTable.Row> CASES = ReferenceTable.read("agreement/kappa_cohen.csv");
    private static final List<ReferenceTable.Row> EXPECTED = ReferenceTable.read("agreement/kappa_cohen_expected.csv");

    @ParameterizedTest
    @ValueSource(strings = {"KC01", "KC02", "KC03", "KC04", "KC05", "KC06", "KC07", "KC08", "KC09", "KC10"})
    void kappa_agreesWithRAndWithPrintedTables(String id) {
        var table = Tables.kept(ReferenceTable.ofCase(CASES, id));
        var kappa = assertInstanceOf(Kappa.Estimated.class, Kappa.of(table, 0.95));
        agrees(id, "n", (double) table.eggs());
        agrees(id, "po", kappa.observed());
        agrees(id, "pe", kappa.expected());
        agrees(id, "kappa", kappa.kappa());
        agrees(id, "se", kappa.standardError());
        agrees(id, "ci_lower", kappa.low());
        agrees(id, "ci_upper", kappa.high());
        agrees(id, "kappa_max", table.margins().mostKappa());
    }

    /** Values that Cohen, Fleiss, Agresti, and Fleiss, Cohen and Everitt printed are among those held. */
    @Test
    void kappa_isHeldAgainstPrintedValues_notOnlyComputedOnes() {
        var held = List.of("po", "pe", "kappa", "se");
        long printed = EXPECTED.stream()
                .filter(r -> r.has("published") && held.contains(r.text("quantity")))
                .count();
        assertEquals(11, printed);
    }

    /**
     * Four grades of a skin condition by two dermatologists: the getting-started example of a statistics system's manual
     * (SAS/STAT, FREQ procedure, "Agreement Study"). The table was read there; its printed answers are from memory.
     */
    @Test
    void kappa_agreesWithAManualsExample() {
        var table = Tables.of(
                new long[] {10, 4, 1, 0}, new long[] {5, 10, 12, 2}, new long[] {2, 4, 12, 5}, new long[] {0, 2, 6, 13
                });
        var kappa = assertInstanceOf(Kappa.Estimated.class, Kappa.of(table, 0.95));
        double halfAPrintedDigit = 0.5e-4;
        assertEquals(0.3449, kappa.kappa(), halfAPrintedDigit);
        assertEquals(0.0724, kappa.standardError(), halfAPrintedDigit);
        assertEquals(0.2030, kappa.low(), halfAPrintedDigit);
        assertEquals(0.4868, kappa.high(), halfAPrintedDigit);
    }

    @Test
    void kappa_isOneWithoutError_whenAllEggsAgree() {
        var kappa = assertInstanceOf(
                Kappa.Estimated.class,
                Kappa.of(Tables.of(new long[] {50, 0, 0}, new long[] {0, 30, 0}, new long[] {0, 0, 7}), 0.95));
        assertEquals(1, kappa.kappa());
        assertEquals(0, kappa.standardError());
        assertEquals(1, kappa.low());
        assertEquals(1, kappa.high());
    }

    @Test
    void kappa_cannotBeTold_whenAllEggsWereCalledOneThing() {
        assertEquals(new Kappa.Undefined(), Kappa.of(Tables.of(new long[] {54}), 0.95));
        assertEquals(
                new Kappa.Undefined(),
                Kappa.of(Tables.of(new long[] {0, 0, 0}, new long[] {0, 54, 0}, new long[] {0, 0, 0}), 0.95));
    }

    @Test
    void kappa_doesNotMind_aWordThatNobodyUsed() {
        var without = Kappa.of(Tables.of(new long[] {40, 3}, new long[] {2, 9}), 0.95);
        var with = Kappa.of(Tables.of(new long[] {40, 0, 3}, new long[] {0, 0, 0}, new long[] {2, 0, 9}), 0.95);
        assertEquals(without, with);
    }

    /** Turning the table round or naming the words in another order changes nothing; eggs told twice shrink the error. */
    @Test
    void kappa_staysTheSame_whicheverLookComesFirst() {
        long seed = 1960;
        var random = new SplittableRandom(seed);
        for (int run = 0; run < 300; run++) {
            int wide = 2 + random.nextInt(5);
            long[][] rows = new long[wide][wide];
            long[][] turned = new long[wide][wide];
            long[][] backwards = new long[wide][wide];
            long[][] fourfold = new long[wide][wide];
            for (int i = 0; i < wide; i++) {
                for (int j = 0; j < wide; j++) {
                    rows[i][j] = random.nextInt(i == j ? 60 : 9);
                    turned[j][i] = rows[i][j];
                    backwards[wide - 1 - i][wide - 1 - j] = rows[i][j];
                    fourfold[i][j] = 4 * rows[i][j];
                }
            }
            String where = java.util.Arrays.deepToString(rows) + ", seed " + seed;
            if (!(Kappa.of(Tables.of(rows), 0.9) instanceof Kappa.Estimated kappa)) {
                continue;
            }
            same(kappa, Kappa.of(Tables.of(turned), 0.9), 1, where);
            same(kappa, Kappa.of(Tables.of(backwards), 0.9), 1, where);
            same(kappa, Kappa.of(Tables.of(fourfold), 0.9), 2, where);
            assertTrue(kappa.kappa() <= 1 && kappa.standardError() >= 0, where);
        }
    }

    private static void same(Kappa.Estimated one, Kappa other, double errorTimes, String where) {
        var two = assertInstanceOf(Kappa.Estimated.class, other, where);
        assertEquals(one.kappa(), two.kappa(), 1e-13, where);
        assertEquals(one.standardError(), errorTimes * two.standardError(), 1e-13, where);
    }

    /** The error is a large-sample one: at 600 eggs the limits hold the truth about as often as they say. */
    @Test
    void kappa_holdsTheTruthAsOftenAsItSays_overManyLooks() {
        // 85 % live; each look calls a live egg clear 1 time in 25 and a clear one live 1 time in 10.
        double both = 0.85 * 0.96 * 0.96 + 0.15 * 0.1 * 0.1;
        double one = 0.85 * 0.96 * 0.04 + 0.15 * 0.1 * 0.9;
        double none = 1 - both - 2 * one;
        double live = both + one;
        double luck = live * live + (1 - live) * (1 - live);
        double truth = (both + none - luck) / (1 - luck);
        long seed = 327;
        var random = new SplittableRandom(seed);
        int runs = 4000;
        int held = 0;
        for (int run = 0; run < runs; run++) {
            long[] cells = new long[4];
            for (int egg = 0; egg < 600; egg++) {
                double u = random.nextDouble();
                cells[u < both ? 0 : u < both + one ? 1 : u < both + 2 * one ? 2 : 3]++;
            }
            var table = Tables.of(new long[] {cells[0], cells[1]}, new long[] {cells[2], cells[3]});
            if (Kappa.of(table, 0.9) instanceof Kappa.Estimated kappa
                    && kappa.low() <= truth
                    && truth <= kappa.high()) {
                held++;
            }
        }
        // Three Monte Carlo errors, and a point for an interval that is only right in the long run.
        assertEquals(0.9, held / (double) runs, 3 * Math.sqrt(0.09 / runs) + 0.01, "seed " + seed);
    }

    @Test
    void table_isRefused_whenItIsNotSquareOrHoldsNoEgg() {
        var names = List.of("live", "clear");
        assertThrows(OutOfRange.class, () -> new AgreementTable(names, List.of(List.of(3L, 1L))));
        assertThrows(OutOfRange.class, () -> new AgreementTable(names, List.of(List.of(3L, 1L), List.of(2L))));
        assertThrows(OutOfRange.class, () -> new AgreementTable(names, List.of(List.of(3L, -1L), List.of(2L, 4L))));
        assertThrows(
                OutOfRange.class,
                () -> new AgreementTable(List.of("live", "live"), List.of(List.of(3L, 1L), List.of(2L, 4L))));
        var empty = assertThrows(
                OutOfRange.class, () -> new AgreementTable(names, List.of(List.of(0L, 0L), List.of(0L, 0L))));
        assertTrue(empty.toString().contains("no egg was looked at twice"), empty.toString());
        assertThrows(OutOfRange.class, () -> Kappa.of(Tables.of(new long[] {3, 1}, new long[] {1, 3}), 95));
    }

    private static void agrees(String id, String quantity, double ours) {
        var answer = ReferenceTable.answer(EXPECTED, id, quantity);
        assertEquals(answer.number("value"), ours, AS_R, id + " " + quantity);
        if (answer.has("published")) {
            var printed = answer.text("published");
            double halfADigit = 0.5 * Math.pow(10, printed.indexOf('.') + 1 - printed.length());
            assertEquals(Double.parseDouble(printed), ours, halfADigit + AS_R, id + " " + quantity);
        }
    }
}
