package eggwright.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.SeasonOfSlips;
import eggwright.book.fold.Ledger;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Picture;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.trade.Stage;
import eggwright.units.Rate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds whatever was noted, and whatever the rates are grouped by. */
class RateReportTest {
    private static final LocalDate FIRST_EGG = LocalDate.of(2027, 3, 22);
    private static final List<Function<GroupRates, Rate>> RATES = List.of(
            GroupRates::fertility,
            GroupRates::apparentFertility,
            GroupRates::hatchOfSet,
            GroupRates::hatchOfFertile,
            GroupRates::chicksOfSet,
            GroupRates::saleableShare);

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void groups_addUpToTheTotal_byAnything(Dimension by) {
        addsUp(Ledger.of(Season.of(Truth.PLAIN, 11, FIRST_EGG).entries()).picture(), by, "plain season");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** Slips of every sort, noted in any order: still nothing is lost, doubled or split. */
    @ParameterizedTest
    @MethodSource("seeds")
    void groups_addUpToTheTotal_whateverWasNoted(long seed) {
        var entries = new ArrayList<>(SeasonOfSlips.of(seed).entries());
        Collections.shuffle(entries, new Random(seed));
        var picture = Ledger.of(entries).picture();
        for (var by : Dimension.values()) {
            addsUp(picture, by, "seed " + seed + " by " + by.word());
        }
    }

    private static void addsUp(Picture picture, Dimension by, String where) {
        var report = RateReport.of(picture, by);
        var total = report.total();
        assertEquals(
                total.eggsSet(),
                report.groups().stream().mapToInt(GroupRates::eggsSet).sum(),
                where);
        for (var fate : Fate.values()) {
            assertEquals(
                    total.eggs(fate),
                    report.groups().stream().mapToInt(g -> g.eggs(fate)).sum(),
                    where + " " + fate.word());
        }
        for (var rate : RATES) {
            assertEquals(rate.apply(total), sum(report, rate), where);
        }
        for (var stage : Stage.losses()) {
            assertEquals(
                    total.loss(stage).ofSet(), sum(report, g -> g.loss(stage).ofSet()), where + " " + stage.word());
            assertEquals(
                    total.loss(stage).ofFertile(),
                    sum(report, g -> g.loss(stage).ofFertile()),
                    where + " " + stage.word());
        }
        assertEquals(0, total.countedWithOthers(), where);
        int with =
                report.groups().stream().mapToInt(GroupRates::countedWithOthers).sum();
        int from = report.groups().stream().mapToInt(GroupRates::fromOthers).sum();
        assertEquals(from, with, where + ": what is counted with others is somewhere");
        for (var group : report.groups()) {
            int fates =
                    group.fates().values().stream().mapToInt(Integer::intValue).sum();
            assertEquals(
                    group.eggsSet() + group.fromOthers(), fates + group.countedWithOthers(), where + " " + group.key());
            assertTrue(group.isJoint() || group.eggsSet() > 0, where + " " + group.key());
            var bounds = group.bounds();
            assertTrue(bounds.low().count() <= bounds.high().count(), where + " " + group.key());
            var corrected = group.trueFertility();
            if (corrected != null) {
                assertTrue(corrected.low() <= corrected.estimate() + 1e-12, where);
                assertTrue(corrected.estimate() <= corrected.high() + 1e-12, where);
            }
        }
    }

    private static Rate sum(RateReport report, Function<GroupRates, Rate> rate) {
        return report.groups().stream().map(rate).reduce(new Rate(0, 0), Rate::plus);
    }

    @Test
    void fertile_isEggsLessInfertileLessUnopenedClears() {
        var picture = Ledger.of(Season.of(Truth.PLAIN, 11, FIRST_EGG).entries()).picture();
        var total = RateReport.of(picture, Dimension.PEN).total();
        assertEquals(
                total.fertility().of() - total.eggs(Fate.INFERTILE) - total.eggs(Fate.CLEAR_UNOPENED),
                total.fertility().count());
    }
}
