package eggwright.rates;

import static eggwright.rates.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Withdrawn;
import eggwright.book.fold.Ledger;
import eggwright.book.name.EntryId;
import eggwright.book.picture.Fate;
import eggwright.book.picture.Picture;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.trade.BreakOutClass;
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
        var entries = new ArrayList<>(season(seed).entries());
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

    /** A season of slips of every sort. */
    static Diary season(long seed) {
        var random = new Random(seed);
        var diary = new Diary();
        var ids = new ArrayList<EntryId>();
        for (int week = 0; week < 5; week++) {
            var set = Integer.toString(week);
            diary.note(
                    MONDAY.plusWeeks(week),
                    setting(
                            set,
                            load(1, lot("A", 20 + random.nextInt(30))),
                            load(2, lot("B", 10 + random.nextInt(30)), lot("A", 5)),
                            load(3, lot("C", 40))));
            for (int n = 0; n < 14; n++) {
                var at = MONDAY.plusWeeks(week).plusDays(random.nextInt(28) - 1);
                int tray = 1 + random.nextInt(4);
                var load = Scope.ofLoad(set(set), tray(tray));
                var scope = random.nextInt(4) == 0
                        ? Scope.ofPen(set(set), pen(random.nextBoolean() ? "A" : "B"))
                        : random.nextBoolean() ? load : Scope.ofSet(set(set));
                ids.add(diary.note(
                        at,
                        switch (random.nextInt(8)) {
                            case 0, 1, 2 ->
                                new Looked(
                                        scope,
                                        random.nextInt(3) == 0 ? random.nextInt(40) : null,
                                        null,
                                        List.of(
                                                FindingCount.removed(Finding.CLEAR, random.nextInt(6)),
                                                FindingCount.removed(Finding.DEAD, random.nextInt(4)),
                                                FindingCount.removed(Finding.CRACKED, random.nextInt(2))),
                                        random.nextInt(2),
                                        null);
                            case 3 ->
                                pool(set, 1 + random.nextInt(2), 3, random.nextBoolean() ? null : random.nextInt(30));
                            case 4 -> transfer(set, tray);
                            case 5 ->
                                new TakenOff(
                                        scope,
                                        random.nextBoolean() ? Pull.LAST : Pull.MORE_TO_COME,
                                        random.nextInt(40),
                                        random.nextInt(3),
                                        random.nextInt(2),
                                        0);
                            case 6 ->
                                open(
                                        scope,
                                        8,
                                        random.nextBoolean() ? null : 3,
                                        as(BreakOutClass.INFERTILE, 3),
                                        as(BreakOutClass.LATE_DEAD, 4));
                            default ->
                                new EggsMoved(
                                        set(set),
                                        tray(tray),
                                        null,
                                        5,
                                        set(Integer.toString(Math.max(0, week - 1))),
                                        tray(5),
                                        null,
                                        null);
                        }));
                if (random.nextInt(5) == 0) {
                    var target = ids.get(random.nextInt(ids.size()));
                    ids.add(diary.note(
                            at.plusDays(2),
                            random.nextBoolean()
                                    ? new Withdrawn(target, target, "slip")
                                    : new Replaced(
                                            target,
                                            target,
                                            at.plusHours(3),
                                            look(set, tray, FindingCount.removed(Finding.ROT, 1)))));
                }
            }
        }
        return diary;
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
