package eggwright.rates;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.LoadPlaced;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Lot;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.book.picture.Fate;
import eggwright.trade.BreakOutClass;
import eggwright.trade.Species;
import eggwright.trade.Stage;
import eggwright.units.Rate;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One farm's evenings: what each way of counting allows to be said of a pen. */
class WhatCountsSayTest {
    private static final Rate NOTHING = new Rate(0, 0);

    /** Two pens in two trays of set 14. */
    private static Diary twoPens() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50)), load(2, lot("9", 40))));
        return diary;
    }

    private static GroupRates group(Diary diary, Dimension by, String key) {
        return RateReport.of(diary.picture(), by).groups().stream()
                .filter(g -> g.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void fertility_isKnownByPen_whenOnlyTheChicksWereCountedTogether() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 8)));
        diary.note(day(24), new TakenOff(Scope.ofSet(set("14")), Pull.LAST, 60, 2, 1, 0));
        var four = group(diary, Dimension.PEN, "4");
        assertEquals(new Rate(45, 50), four.fertility());
        assertEquals(NOTHING, four.hatchOfSet());
        assertEquals(NOTHING, four.hatchOfFertile());
        assertEquals(45, four.countedWithOthers());
        var both = group(diary, Dimension.PEN, "4+9");
        assertEquals(List.of("4", "9"), both.keys());
        assertEquals(0, both.eggsSet());
        assertEquals(77, both.fromOthers());
        assertEquals(new Rate(60, 90), both.hatchOfSet());
        assertEquals(new Rate(60, 77), both.hatchOfFertile());
        assertEquals(new Rate(63, 90), both.chicksOfSet());
        assertEquals(new Rate(60, 63), both.saleableShare());
        assertEquals(NOTHING, both.fertility());
        assertEquals(
                new Rate(60, 90),
                RateReport.of(diary.picture(), Dimension.SET).total().hatchOfSet());
    }

    @Test
    void loss_ofOnePen_isNotWorkedOut_whenItWasCountedWithAnothers() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.BLOOD_RING, 2)));
        diary.note(day(8), look("14", 2));
        diary.note(day(24), new TakenOff(Scope.ofSet(set("14")), Pull.LAST, 60, 3, 0, 0));
        var four = group(diary, Dimension.PEN, "4");
        assertEquals(new StageLoss(Stage.BLOOD_RING, 2, new Rate(2, 50), new Rate(2, 50)), four.loss(Stage.BLOOD_RING));
        assertEquals(new StageLoss(Stage.CULLED, 0, NOTHING, NOTHING), four.loss(Stage.CULLED));
        assertEquals(
                new Rate(3, 90),
                group(diary, Dimension.PEN, "4+9").loss(Stage.CULLED).ofFertile());
    }

    @Test
    void fertility_isNotSaid_whenNobodyLooked() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(24), pull(Scope.ofLoad(set("14"), tray(1)), Pull.LAST, 40));
        diary.note(day(24), pull(Scope.ofLoad(set("14"), tray(2)), Pull.LAST, 30));
        assertEquals(NOTHING, group(diary, Dimension.PEN, "9").fertility());
        var total = RateReport.of(diary.picture(), Dimension.PEN).total();
        assertEquals(new Rate(45, 50), total.fertility());
        assertEquals(new Rate(70, 90), total.hatchOfSet());
        assertEquals(new Rate(40, 45), total.hatchOfFertile());
    }

    @Test
    void look_thatFoundNothing_countsForEggsPooledFromOtherTrays() {
        var diary = twoPens();
        diary.note(day(2), pool("14", 1, 3, null));
        diary.note(day(2), pool("14", 2, 3, null));
        diary.note(day(8), look("14", 3));
        assertEquals(new Rate(50, 50), group(diary, Dimension.PEN, "4").fertility());
        assertEquals(new Rate(40, 40), group(diary, Dimension.PEN, "9").fertility());
    }

    @Test
    void eggsNotLookedAt_areNotLive() {
        var diary = twoPens();
        diary.note(
                day(8),
                new Looked(
                        Scope.ofLoad(set("14"), tray(1)),
                        20,
                        null,
                        List.of(FindingCount.removed(Finding.CLEAR, 3)),
                        0,
                        null));
        var four = group(diary, Dimension.PEN, "4");
        assertEquals(new Rate(17, 20), four.fertility());
        assertEquals(new Rate(17, 20), four.apparentFertility());
    }

    @Test
    void hatch_waits_untilNoEggIsIn_andStillInSaysHowMany() {
        var diary = twoPens();
        diary.note(day(24), pull(Scope.ofLoad(set("14"), tray(1)), Pull.LAST, 40));
        diary.note(day(24), pull(Scope.ofLoad(set("14"), tray(2)), Pull.MORE_TO_COME, 10));
        var nine = group(diary, Dimension.PEN, "9");
        assertEquals(NOTHING, nine.hatchOfSet());
        assertEquals(30, nine.stillIn());
        assertEquals(10, nine.eggs(Fate.SALEABLE));
        assertEquals(
                new Rate(40, 50),
                RateReport.of(diary.picture(), Dimension.PEN).total().hatchOfSet());
    }

    @Test
    void basis_tellsWhetherClearsWereOpened_andOpenedOnesCorrectTheRest() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 10)));
        assertEquals(Basis.APPARENT, group(diary, Dimension.PEN, "4").basis());
        assertNull(group(diary, Dimension.PEN, "4").trueFertility());
        diary.note(
                day(9),
                open(
                        Scope.ofLoad(set("14"), tray(1)),
                        5,
                        5,
                        as(BreakOutClass.INFERTILE, 4),
                        as(BreakOutClass.EARLY_DEAD, 1)));
        var some = group(diary, Dimension.PEN, "4");
        assertEquals(Basis.MIXED, some.basis());
        assertEquals(new Rate(41, 50), some.fertility());
        assertEquals(new Rate(40, 50), some.apparentFertility());
        var corrected = some.trueFertility();
        assertNotNull(corrected);
        assertEquals(1 - 0.2 * 0.8, corrected.estimate(), 1e-12);
        assertTrue(corrected.low() < 0.84 && 0.84 < corrected.high());
        diary.note(day(9).plusHours(1), open(Scope.ofLoad(set("14"), tray(1)), 5, 5, as(BreakOutClass.INFERTILE, 5)));
        var all = group(diary, Dimension.PEN, "4");
        assertEquals(Basis.OPENED, all.basis());
        assertEquals(new Rate(41, 50), all.fertility());
    }

    @Test
    void infertileFoundAtTheEnd_countsAsAClearThatTheLampMissed() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 4)));
        diary.note(day(24), pull(Scope.ofLoad(set("14"), tray(1)), Pull.LAST, 40));
        diary.note(
                day(24).plusHours(1),
                open(
                        Scope.ofLoad(set("14"), tray(1)),
                        6,
                        0,
                        as(BreakOutClass.INFERTILE, 2),
                        as(BreakOutClass.LATE_DEAD, 4)));
        var four = group(diary, Dimension.PEN, "4");
        assertEquals(Basis.APPARENT, four.basis());
        assertEquals(new Rate(44, 50), four.fertility());
        assertEquals(new Rate(46, 50), four.apparentFertility());
        assertEquals(new Rate(40, 44), four.hatchOfFertile());
    }

    @Test
    void bounds_takeInEggsThatMayBeAnothersToo() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CRACKED, 1)));
        diary.note(day(24), pull(Scope.ofSet(set("14")), Pull.MORE_TO_COME, 70));
        diary.note(day(24).plusHours(1), pull(Scope.ofSet(set("14")), Pull.LAST, 0));
        var four = group(diary, Dimension.PEN, "4");
        assertEquals(0, four.undetermined());
        assertEquals(new Rate(45 - 14, 50), four.bounds().low());
        assertEquals(new Rate(45, 50), four.bounds().high());
        var total = RateReport.of(diary.picture(), Dimension.PEN).total();
        assertEquals(15, total.undetermined());
        assertEquals(new Rate(85 - 15, 90), total.bounds().low());
    }

    @Test
    void ranking_saysWhichFertilityIsTheSameThingInAllGroups() {
        var diary = twoPens();
        assertInstanceOf(
                FertilityRanking.NothingSeen.class,
                RateReport.of(diary.picture(), Dimension.PEN).ranking());
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 4)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 6)));
        assertEquals(
                new FertilityRanking.AsCounted(Basis.APPARENT),
                RateReport.of(diary.picture(), Dimension.PEN).ranking());
        diary.note(day(9), open(Scope.ofLoad(set("14"), tray(1)), 4, 4, as(BreakOutClass.INFERTILE, 4)));
        assertInstanceOf(
                FertilityRanking.AtTheLamp.class,
                RateReport.of(diary.picture(), Dimension.PEN).ranking());
        diary.note(day(9), open(Scope.ofLoad(set("14"), tray(2)), 3, 3, as(BreakOutClass.INFERTILE, 3)));
        assertInstanceOf(
                FertilityRanking.Corrected.class,
                RateReport.of(diary.picture(), Dimension.PEN).ranking());
    }

    @Test
    void ranking_isRefused_whenOnePenWasOnlyOpenedAndOneOnlyLookedAt() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 4)));
        var nine = Scope.ofLoad(set("14"), tray(2));
        diary.note(day(24), pull(nine, Pull.LAST, 30));
        diary.note(day(25), open(nine, 10, null, as(BreakOutClass.INFERTILE, 6), as(BreakOutClass.LATE_DEAD, 4)));
        assertEquals(
                new FertilityRanking.Not(List.of("4"), List.of("9")),
                RateReport.of(diary.picture(), Dimension.PEN).ranking());
    }

    @Test
    void keys_areWeeksAndDays_ofTheMiddleOfTheLayDates() {
        var diary = new Diary();
        var from = LocalDate.of(2027, 3, 28);
        diary.note(
                MONDAY,
                setting(
                        "14",
                        load(1, Lot.of(pen("4"), Species.PHEASANT, from, from.plusDays(3), 30)),
                        load(2, Lot.of(null, Species.PHEASANT, null, null, 20))));
        assertEquals(
                List.of("7", "not recorded"),
                RateReport.of(diary.picture(), Dimension.STORAGE_DAYS).groups().stream()
                        .map(GroupRates::key)
                        .toList());
        assertEquals(
                List.of("2027-W13", "not recorded"),
                RateReport.of(diary.picture(), Dimension.LAY_WEEK).groups().stream()
                        .map(GroupRates::key)
                        .toList());
        assertEquals(
                "2027-W14",
                RateReport.of(diary.picture(), Dimension.SET_WEEK)
                        .groups()
                        .getFirst()
                        .key());
        assertEquals(20, group(diary, Dimension.PEN, "not recorded").eggsSet());
    }

    @Test
    void section_isThatOfAllStays_whenATrayWalked() {
        var diary = twoPens();
        diary.note(day(6), new LoadPlaced(set("14"), tray(1), new MachineName("Setter 1"), new SectionName("3"), null));
        diary.note(day(21), transfer("14", 1));
        assertEquals(
                List.of("2", "2 > 3"),
                RateReport.of(diary.picture(), Dimension.SECTION).groups().stream()
                        .map(GroupRates::key)
                        .toList());
        assertEquals(
                List.of("Setter 1"),
                RateReport.of(diary.picture(), Dimension.MACHINE).groups().stream()
                        .map(GroupRates::key)
                        .toList());
    }

    @Test
    void contrast_isTooFew_whenATrayHasNoOtherToScatterAgainst() {
        var diary = twoPens();
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 25)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 2)));
        for (var contrast : Contrasts.fertility(diary.picture(), Dimension.PEN).contrasts()) {
            assertEquals(Verdict.TOO_FEW, contrast.verdict());
        }
    }
}
