package eggwright.desk.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.picture.IntervalPlot.Standing;
import eggwright.desk.rate.Comparison.Figure;
import eggwright.rates.Basis;
import eggwright.rates.Contrast;
import eggwright.rates.Contrasts;
import eggwright.rates.Dimension;
import eggwright.rates.FertilityBounds;
import eggwright.rates.GroupRates;
import eggwright.rates.Measure;
import eggwright.rates.RateReport;
import eggwright.stats.chances.Scatter;
import eggwright.stats.doublesampling.OpenedClears;
import eggwright.units.Rate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which figure stands in a picture of fertility: never the lamp's against opened clears. */
@NullMarked
final class ComparisonTest {
    private static final Rate NOTHING = new Rate(0, 0);

    @Test
    void fertility_isThatOfOpenedClears_whenAllWereOpened() {
        var plot = compare(
                group("4", Basis.OPENED, new Rate(95, 100), new Rate(90, 100), null),
                group("9", Basis.OPENED, new Rate(80, 100), new Rate(75, 100), null));

        assertEquals(Figure.FERTILITY_OPENED, plot.figure());
        assertEquals(List.of(95.0, 80.0), pcts(plot));
    }

    @Test
    void fertility_isThatOfTheLamp_whenClearsWereOpenedInOnePenOnly() {
        var plot = compare(
                group("4", Basis.OPENED, new Rate(95, 100), new Rate(90, 100), null),
                group("9", Basis.APPARENT, new Rate(92, 100), new Rate(92, 100), null));

        assertEquals(Figure.FERTILITY_BY_THE_LAMP, plot.figure());
        assertEquals(List.of(90.0, 92.0), pcts(plot));
    }

    @Test
    void fertility_isCorrected_whenClearsWereOpenedInPartEverywhere() {
        var opened = new OpenedClears(100, 20, 10, 5);
        var plot = compare(
                group("4", Basis.MIXED, new Rate(85, 100), new Rate(80, 100), opened),
                group("9", Basis.MIXED, new Rate(85, 100), new Rate(80, 100), opened));

        assertEquals(Figure.FERTILITY_CORRECTED, plot.figure());
        assertEquals(100 * opened.fertileShare(0.95).estimate(), pcts(plot).getFirst(), 1e-9);
        assertTrue(pcts(plot).getFirst() > 85, "half of the clears were fertile, so more were than was counted");
    }

    @Test
    void fertility_leavesOut_whomNobodyLookedAt() {
        var plot = compare(
                group("4", Basis.OPENED, new Rate(95, 100), NOTHING, null),
                group("9", Basis.APPARENT, new Rate(92, 100), new Rate(92, 100), null));

        assertEquals(List.of("4"), plot.leftOut());
        assertEquals(List.of(92.0), pcts(plot));
    }

    @Test
    void fertility_isNotDrawn_whenNobodySawIt() {
        var plot = compare(group("4", Basis.APPARENT, NOTHING, NOTHING, null));

        assertTrue(ComparisonPlot.of(plot, "fertility", Locale.ENGLISH).isEmpty());
    }

    @Test
    void groups_standByWhatMatters_theWorstThatIsHardlyLuckFirst() {
        var groups = List.of(
                compared("few", new Rate(1, 2), new Contrast.TooFew("few", new Rate(1, 2), new Rate(380, 400))),
                compared("usual", new Rate(94, 100), contrast("usual", new Rate(94, 100), 0.9)),
                compared("good", new Rate(100, 100), contrast("good", new Rate(100, 100), 0.01)),
                compared("bad", new Rate(70, 100), contrast("bad", new Rate(70, 100), 0.0001)));

        assertEquals(
                List.of("bad", "good", "usual", "few"),
                groups.stream()
                        .sorted(Compared.WHAT_MATTERS)
                        .map(c -> c.group().key())
                        .toList());
        assertEquals(
                List.of(Standing.TOO_FEW, Standing.USUAL, Standing.ABOVE, Standing.BELOW),
                groups.stream().map(Compared::standing).toList());
    }

    private static Contrast contrast(String key, Rate rate, double chance) {
        return new Contrast.Compared(key, rate, new Rate(380, 400), chance, chance);
    }

    private static Compared compared(String key, Rate rate, Contrast contrast) {
        var group = group(key, Basis.APPARENT, rate, rate, null);
        return new Compared(group, rate, Compared.Share.of(rate), java.util.Optional.of(contrast));
    }

    private static List<Double> pcts(Comparison comparison) {
        return comparison.groups().stream().map(c -> c.share().pct()).toList();
    }

    private static Comparison compare(GroupRates... groups) {
        var total = group(Dimension.ALL, Basis.APPARENT, new Rate(180, 200), new Rate(170, 200), null);
        var contrasts = new Contrasts(Measure.FERTILITY, new Scatter(0, 0), List.of());
        return Comparison.fertility(new RateReport(List.of(groups), total), contrasts, Dimension.PEN);
    }

    private static GroupRates group(
            String key, Basis basis, Rate fertility, Rate apparent, @Nullable OpenedClears opened) {
        return new GroupRates(
                key,
                List.of(key),
                100,
                Map.of(),
                0,
                0,
                basis,
                fertility,
                new FertilityBounds(fertility, fertility),
                apparent,
                opened,
                NOTHING,
                NOTHING,
                NOTHING,
                NOTHING,
                List.of());
    }
}
