package eggwright.stats.mixed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.units.OutOfRange;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a model does with what a farm's book can hold: nothing, all, one tray, one pen, twins, gaps. */
class MixedModelTest {
    private static final List<String> MACHINES = List.of("A", "B");
    private static final double SAME = 1e-6;

    @Test
    void fit_saysNoneOrAll_whenNoOrEveryEggWasFertile() {
        assertEquals(
                new MixedOutcome.NoneOrAll(false), pens(new int[] {0, 0, 0, 0}).fit());
        assertEquals(
                new MixedOutcome.NoneOrAll(true),
                pens(new int[] {54, 54, 54, 54}).fit());
    }

    @Test
    void fit_answers_whenThereIsOneTray() {
        var model = new MixedModel(
                new BinomialCounts(new int[] {45}, new int[] {54}),
                List.of(),
                List.of(new Grouping("pen", new int[] {0}, List.of("4"))));
        var fit = fitted(model.fit());
        assertTrue(fit.singular());
        assertEquals(Math.log(45 / 9.0), fit.fixed().getFirst().estimate(), SAME);
        assertEquals(Math.sqrt(1 / 45.0 + 1 / 9.0), fit.fixed().getFirst().standardError(), 1e-4);
        assertEquals(0, fit.random().getFirst().standardDeviation());
    }

    @Test
    void fit_findsNoScatter_whenAllTraysAreAlike() {
        var fit = fitted(pens(new int[] {45, 45, 45, 45}).fit());
        assertTrue(fit.singular());
        assertTrue(fit.converged());
        assertEquals(0, Arrays.stream(fit.random().getFirst().effects()).sum());
    }

    @Test
    void fit_namesWhatPartsTheEggs_whenOneMachineKilledAll() {
        var model = new MixedModel(
                new BinomialCounts(new int[] {40, 45, 0, 0}, new int[] {54, 54, 54, 54}),
                List.of(new Term.Category("machine", new int[] {0, 0, 1, 1}, MACHINES)),
                List.of(rows(4)));
        assertEquals(new MixedOutcome.Separated(List.of("machine=B")), model.fit());
    }

    @Test
    void fit_namesWhatPartsTheEggs_whenOldEggsAllFailed() {
        var model = new MixedModel(
                new BinomialCounts(new int[] {1, 1, 1, 0, 0, 0}, new int[] {1, 1, 1, 1, 1, 1}),
                List.of(
                        new Term.Numbers("hens", new double[] {7, 8, 9, 7, 8, 9.5}),
                        new Term.Numbers("storage_days", new double[] {1, 2, 3, 14, 15, 16})),
                List.of());
        var parted = assertInstanceOf(MixedOutcome.Separated.class, model.fit());
        assertTrue(parted.terms().contains("storage_days"), parted::toString);
    }

    @Test
    void fit_saysUnbounded_whenEveryPenIsAllOrNone() {
        int[] yes = new int[60];
        Arrays.fill(yes, 0, 30, 20);
        int[] all = new int[60];
        Arrays.fill(all, 20);
        var model = new MixedModel(
                new BinomialCounts(yes, all),
                List.of(),
                List.of(new Grouping(
                        "pen",
                        IntStream.range(0, 60).map(row -> row / 3).toArray(),
                        IntStream.range(0, 20).mapToObj(Integer::toString).toList())));
        assertEquals(new MixedOutcome.Unbounded("pen"), model.fit());
    }

    @Test
    void fit_passesOverRows_inWhichNothingWasCounted() {
        var some = pens(new int[] {40, 45, 50, 20});
        var more = new MixedModel(
                new BinomialCounts(new int[] {40, 45, 0, 50, 20}, new int[] {54, 54, 0, 54, 54}),
                List.of(),
                List.of(new Grouping("pen", new int[] {0, 0, 0, 1, 1}, List.of("1", "2"))));
        assertEquals(fitted(some.fit()).logLikelihood(), fitted(more.fit()).logLikelihood(), SAME);
        assertThrows(
                OutOfRange.class,
                () -> new MixedModel(new BinomialCounts(new int[2], new int[2]), List.of(), List.of()).fit());
    }

    @Test
    void fit_leavesOutWhatNoRowShows_andSaysSo() {
        var model = new MixedModel(
                new BinomialCounts(new int[] {40, 45, 30, 41, 38, 20}, new int[] {54, 54, 54, 54, 54, 54}),
                List.of(
                        new Term.Category("machine", new int[] {0, 0, 1, 1, 0, 0}, MACHINES),
                        new Term.Category("shelf", new int[] {0, 1, 0, 0, 1, 0}, List.of("low", "top")),
                        new Term.Interaction(
                                new Term.Category("machine", new int[] {0, 0, 1, 1, 0, 0}, MACHINES),
                                new Term.Category("shelf", new int[] {0, 1, 0, 0, 1, 0}, List.of("low", "top")))),
                List.of(rows(6)));
        var fit = fitted(model.fit());
        assertEquals(List.of("machine=B by shelf=top"), fit.empty());
        assertEquals(
                List.of("intercept", "machine=B", "shelf=top"),
                fit.fixed().stream().map(FixedEffect::term).toList());
    }

    @Test
    void fit_leavesOutACell_inWhichNothingWasCounted() {
        var fit = fitted(byMachineAndShelf(
                        new int[] {40, 45, 30, 0}, new int[] {54, 54, 54, 0}, new int[] {0, 0, 1, 1}, new int[] {
                            0, 1, 0, 1
                        })
                .fit());
        assertEquals(List.of("machine=B by shelf=top"), fit.empty());
        assertEquals(Math.log(40 / 14.0), fit.fixed().getFirst().estimate(), SAME);
    }

    /** Three cells with eggs have three coefficients, whichever of the four is empty, and each cell its own rate. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void fit_answers_whicheverCellIsEmpty(int emptyCell) {
        int[] cells = IntStream.range(0, 4).filter(cell -> cell != emptyCell).toArray();
        int[] yes = {40, 45, 30};
        var fit = fitted(byMachineAndShelf(
                        yes,
                        new int[] {54, 54, 54},
                        IntStream.of(cells).map(cell -> cell / 2).toArray(),
                        IntStream.of(cells).map(cell -> cell % 2).toArray())
                .fit());
        assertEquals(List.of("machine=B by shelf=top"), fit.empty());
        var terms = fit.fixed();
        assertEquals(3, terms.size());
        for (int i = 0; i < cells.length; i++) {
            int machine = cells[i] / 2;
            int shelf = cells[i] % 2;
            double logit = terms.get(0).estimate()
                    + machine * terms.get(1).estimate()
                    + shelf * terms.get(2).estimate();
            assertEquals(Math.log(yes[i] / (54.0 - yes[i])), logit, SAME);
        }
    }

    @Test
    void fit_refusesTwoCoefficientsOfOneName() {
        var counts = new BinomialCounts(new int[] {40, 45, 30, 41}, new int[] {54, 54, 54, 54});
        for (var name : List.of("intercept", "machine=B")) {
            var terms = List.<Term>of(
                    new Term.Category("machine", new int[] {0, 1, 0, 1}, MACHINES),
                    new Term.Numbers(name, new double[] {1, 4, 6, 8}));
            assertEquals(
                    "\"" + name + "\" would be the name of two coefficients. Rename one of the columns",
                    assertThrows(OutOfRange.class, () -> new MixedModel(counts, terms, List.of()).fit())
                            .getMessage());
        }
    }

    private static MixedModel byMachineAndShelf(int[] yes, int[] all, int[] machineOfRow, int[] shelfOfRow) {
        var machine = new Term.Category("machine", machineOfRow, MACHINES);
        var shelf = new Term.Category("shelf", shelfOfRow, List.of("low", "top"));
        return new MixedModel(
                new BinomialCounts(yes, all), List.of(machine, shelf, new Term.Interaction(machine, shelf)), List.of());
    }

    @Test
    void fit_namesCollinearTerms() {
        var counts = new BinomialCounts(new int[] {40, 45, 30, 41}, new int[] {54, 54, 54, 54});
        var days = new Term.Numbers("storage_days", new double[] {1, 4, 6, 9});
        var hours = new Term.Numbers("storage_hours", new double[] {24, 96, 144, 216});
        var same = new Term.Numbers("year", new double[] {2026, 2026, 2026, 2026});
        assertEquals(
                "\"storage_hours\" can be had from \"storage_days\", so that their effects cannot be told apart. "
                        + "Leave one of them out",
                assertThrows(OutOfRange.class, () -> new MixedModel(counts, List.of(days, hours), List.of()).fit())
                        .getMessage());
        var constant =
                assertThrows(OutOfRange.class, () -> new MixedModel(counts, List.of(days, same), List.of()).fit());
        assertTrue(String.valueOf(constant.getMessage()).startsWith("\"year\" is the same in every row"));
    }

    @Test
    void model_refusesTwinGroupings() {
        var counts = new BinomialCounts(new int[] {40, 45, 30}, new int[] {54, 54, 54});
        var tray = new Grouping("tray", new int[] {2, 0, 1}, List.of("a", "b", "c"));
        var refused = assertThrows(OutOfRange.class, () -> new MixedModel(counts, List.of(), List.of(tray, rows(3))));
        assertTrue(String.valueOf(refused.getMessage()).contains("\"row\" and \"tray\" part the rows alike"));
    }

    @Test
    void model_refusesQuadratureOfSeveralGroupings() {
        var model = PublishedModels.salamanders();
        assertThrows(OutOfRange.class, () -> model.fit(9));
        assertThrows(OutOfRange.class, () -> model.fit(0));
    }

    @Test
    void counts_nameTheRow_inWhichMoreDidThanWere() {
        var refused =
                assertThrows(OutOfRange.class, () -> new BinomialCounts(new int[] {4, 60, 4}, new int[] {54, 54, 54}));
        assertTrue(String.valueOf(refused.getMessage()).startsWith("Row 2: 60 of 54"));
    }

    /** A tray's own level is eliminated by a formula; split over two rows it goes through the matrix instead. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void fit_isTheSame_whenEachTrayIsSplitInTwoRows(long seed) {
        var whole = season(seed, 1);
        var halves = season(seed, 2);
        var one = fitted(whole.fit());
        var two = fitted(halves.fit());
        for (int i = 0; i < one.fixed().size(); i++) {
            assertEquals(one.fixed().get(i).estimate(), two.fixed().get(i).estimate(), SAME);
            assertEquals(one.fixed().get(i).standardError(), two.fixed().get(i).standardError(), SAME);
        }
        for (int g = 0; g < one.random().size(); g++) {
            var a = one.random().get(g);
            var b = two.random().get(g);
            assertEquals(a.standardDeviation(), b.standardDeviation(), SAME);
            for (int level = 0; level < a.effects().length; level++) {
                assertEquals(a.effects()[level], b.effects()[level], SAME);
                assertEquals(a.deviations()[level], b.deviations()[level], SAME);
            }
        }
        assertEquals(
                one.logLikelihood() - whole.counts().logCoefficients(),
                two.logLikelihood() - halves.counts().logCoefficients(),
                SAME);
    }

    /** Pens crossed with weeks, trays within; each tray in so many rows. */
    private static MixedModel season(long seed, int rowsOfTray) {
        var random = new Random(seed);
        int trays = 120;
        int rows = trays * rowsOfTray;
        int[] yes = new int[rows];
        int[] all = new int[rows];
        int[] pen = new int[rows];
        int[] week = new int[rows];
        int[] tray = new int[rows];
        double[] days = new double[rows];
        double[] ofPen = random.doubles(6).map(u -> random.nextGaussian() * 0.6).toArray();
        double[] ofWeek =
                random.doubles(5).map(u -> random.nextGaussian() * 0.4).toArray();
        for (int t = 0; t < trays; t++) {
            int stored = random.nextInt(14);
            double eta = 1.5 - 0.08 * stored + ofPen[t % 6] + ofWeek[t / 6 % 5] + 0.4 * random.nextGaussian();
            for (int egg = 0; egg < 54; egg++) {
                int row = t * rowsOfTray + egg % rowsOfTray;
                all[row]++;
                yes[row] += random.nextDouble() < 1 / (1 + Math.exp(-eta)) ? 1 : 0;
            }
            for (int row = t * rowsOfTray; row < (t + 1) * rowsOfTray; row++) {
                pen[row] = t % 6;
                week[row] = t / 6 % 5;
                tray[row] = t;
                days[row] = stored;
            }
        }
        return new MixedModel(
                new BinomialCounts(yes, all),
                List.of(new Term.Numbers("storage_days", days)),
                List.of(named("pen", pen, 6), named("week", week, 5), named("tray", tray, trays)));
    }

    private static Grouping named(String name, int[] levelOfRow, int levels) {
        return new Grouping(
                name,
                levelOfRow,
                IntStream.range(0, levels).mapToObj(Integer::toString).toList());
    }

    private static MixedModel pens(int[] yes) {
        return new MixedModel(
                new BinomialCounts(yes, new int[] {54, 54, 54, 54}),
                List.of(),
                List.of(new Grouping("pen", new int[] {0, 0, 1, 1}, List.of("1", "2"))));
    }

    private static Grouping rows(int rows) {
        return named("row", IntStream.range(0, rows).toArray(), rows);
    }

    private static MixedOutcome.Fitted fitted(MixedOutcome outcome) {
        return assertInstanceOf(MixedOutcome.Fitted.class, outcome);
    }
}
