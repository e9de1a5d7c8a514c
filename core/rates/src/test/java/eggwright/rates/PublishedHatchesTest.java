package eggwright.rates;

import static eggwright.book.diary.Diary.*;
import static eggwright.rates.Published.count;
import static eggwright.rates.Published.number;
import static eggwright.rates.Published.rows;
import static eggwright.rates.Published.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Lot;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.picture.Fate;
import eggwright.stats.interval.Intervals;
import eggwright.trade.BreakOutClass;
import eggwright.trade.Species;
import eggwright.trade.Stage;
import eggwright.units.Rate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Published hatches, noted as a keeper would note them, give the published figures. Sources: first lines of the files. */
class PublishedHatchesTest {
    private static final double ONE_DECIMAL = 0.05 + 1e-9;
    private static final double TWO_DECIMALS = 0.005 + 1e-9;
    private static final Scope TRAY = Scope.ofLoad(set("1"), tray(1));

    /** One tray: set, all taken off. */
    private static Diary hatch(int eggs, int saleable, int culled, int deadInBasket) {
        var diary = new Diary();
        diary.note(MONDAY, setting("1", load(1, lot("4", eggs))));
        diary.note(day(24), new TakenOff(TRAY, Pull.LAST, saleable, culled, deadInBasket, 0));
        return diary;
    }

    private static void assertShown(double pct, double low, double high, Rate rate, double within) {
        var interval = Intervals.wilson95(rate);
        assertEquals(pct, rate.pct(), within);
        assertEquals(low, 100 * interval.low(), within);
        assertEquals(high, 100 * interval.high(), within);
    }

    /** Butcher and Nilipour, EDIS VM101, Table 1, taken a hundred times. */
    @Test
    void breakOutStandard_givesItsFertilityAndBothHatchesOfFertile() {
        Map<String, Integer> eggs = new HashMap<>();
        for (var row : rows("breakout_standard_100_eggs")) {
            eggs.put(text(row, "outcome"), (int) Math.round(100 * number(row, "pct_of_eggs_set")));
        }
        var diary = hatch(
                eggs.getOrDefault("printed_total", 0),
                eggs.getOrDefault("hatch", 0),
                eggs.getOrDefault("second_quality_chicks", 0),
                eggs.getOrDefault("dead_chicks", 0));
        int mid = eggs.getOrDefault("dead_day_5_to_10", 0) + eggs.getOrDefault("dead_day_11_to_17", 0);
        diary.note(
                day(24),
                open(
                        TRAY,
                        1375,
                        null,
                        as(BreakOutClass.INFERTILE, eggs.getOrDefault("infertile", 0)),
                        as(BreakOutClass.EARLY_DEAD, eggs.getOrDefault("dead_day_1_to_4", 0)),
                        as(BreakOutClass.MID_DEAD, mid),
                        as(BreakOutClass.LATE_DEAD, eggs.getOrDefault("dead_day_18_to_21", 0)),
                        as(BreakOutClass.PIPPED_DEAD, eggs.getOrDefault("pipped_eggs", 0)),
                        as(BreakOutClass.CONTAMINATED, eggs.getOrDefault("contamination", 0))));
        var total = RateReport.of(diary.picture(), Dimension.NONE).total();
        assertEquals(Basis.OPENED, total.basis());
        assertEquals(95.5, total.fertility().pct(), 1e-9);
        assertEquals(89.01, total.hatchOfFertile().pct(), TWO_DECIMALS);
        assertEquals(86.25, total.chicksOfSet().pct(), 1e-9);
        // 90.3 counts all that left the shell, against our fertile.
        assertEquals(
                90.3, 100.0 * total.chicksOfSet().count() / total.fertility().count(), ONE_DECIMAL);
        assertEquals(2.5, total.loss(Stage.EARLY_DEAD).ofSet().pct(), 1e-9);
        assertEquals(1.25, total.loss(Stage.PIPPED_DEAD).ofSet().pct(), 1e-9);
        assertEquals(0, total.eggs(Fate.UNACCOUNTED));
        assertEquals(0, total.undetermined());
    }

    @Test
    void workedExamples_giveThePrintedAnswers() {
        var examples = rows("worked_breakout_examples");
        var a = hatch(2000, 1728, 0, 0);
        a.note(day(8), look("1", 1, FindingCount.removed(Finding.CLEAR, 93)));
        a.note(day(8).plusHours(1), open(TRAY, 93, 93, as(BreakOutClass.INFERTILE, 93)));
        var total = RateReport.of(a.picture(), Dimension.NONE).total();
        assertEquals(
                number(examples.get(0), "printed_answer_pct"), total.fertility().pct(), TWO_DECIMALS);
        assertEquals(
                number(examples.get(1), "printed_answer_pct"),
                total.hatchOfFertile().pct(),
                ONE_DECIMAL);
        for (var example : examples.subList(2, 4)) {
            int infertile = count(example, "infertile_n");
            var b = hatch(150, 147 - infertile, 0, 0);
            b.note(
                    day(24),
                    open(
                            TRAY,
                            3 + infertile,
                            null,
                            as(BreakOutClass.INFERTILE, infertile),
                            as(BreakOutClass.EARLY_DEAD, 3)));
            var loss = RateReport.of(b.picture(), Dimension.NONE).total().loss(Stage.EARLY_DEAD);
            assertEquals(2, loss.ofSet().pct(), 1e-9);
            assertEquals(number(example, "printed_answer_pct"), loss.ofFertile().pct(), 1e-9);
        }
        var c = RateReport.of(hatch(200, 180, 0, 0).picture(), Dimension.NONE).total();
        assertEquals(
                number(examples.get(4), "printed_answer_pct"), c.hatchOfSet().pct(), 1e-9);
    }

    @Test
    void pheasantsHatchedInWinter_giveThirtyPercent_withAWideInterval() {
        var row = rows("pheasant_winter_hatch_breakout").getFirst();
        var diary = hatch(count(row, "eggs_set_n"), count(row, "hatched_n"), 0, 0);
        diary.note(
                day(26),
                open(
                        TRAY,
                        7,
                        null,
                        as(BreakOutClass.INFERTILE, count(row, "derived_infertile_n")),
                        as(BreakOutClass.MID_DEAD, count(row, "dead_about_two_weeks_n")),
                        as(BreakOutClass.LATE_DEAD, count(row, "dead_full_term_n"))));
        var total = RateReport.of(diary.picture(), Dimension.NONE).total();
        assertEquals(number(row, "printed_fertility_pct"), total.fertility().pct(), 1e-9);
        assertShown(30, 10.8, 60.3, total.hatchOfSet(), ONE_DECIMAL);
        assertEquals(new Rate(3, 5), total.hatchOfFertile());
    }

    @Test
    void redLeggedPartridges_giveThePrintedFertilityAndHatch_ofBothTrials() {
        double[][] wilson = {{63.8, 76.4, 74.4, 87.1}, {67.2, 81.0, 78.0, 91.0}};
        var trials = rows("red_legged_partridge_two_trials");
        for (int i = 0; i < trials.size(); i++) {
            var row = trials.get(i);
            int eggs = count(row, "eggs_set_n");
            var diary = hatch(eggs, count(row, "derived_hatched_n"), 0, 0);
            diary.note(
                    day(10), look("1", 1, FindingCount.removed(Finding.CLEAR, eggs - count(row, "derived_fertile_n"))));
            var total = RateReport.of(diary.picture(), Dimension.NONE).total();
            assertEquals(Basis.APPARENT, total.basis());
            assertShown(number(row, "fertility_pct"), wilson[i][0], wilson[i][1], total.fertility(), ONE_DECIMAL);
            assertShown(
                    number(row, "hatch_of_fertile_pct"),
                    wilson[i][2],
                    wilson[i][3],
                    total.hatchOfFertile(),
                    ONE_DECIMAL);
        }
    }

    @Test
    void bobwhites_giveTheirHatchOfSet_andNoFertility_whenNobodyLooked() {
        var row = rows("bobwhite_captive_totals").getFirst();
        var diary = hatch(count(row, "eggs_analysed_n"), count(row, "hatched_n"), 0, 0);
        var total = RateReport.of(diary.picture(), Dimension.NONE).total();
        assertShown(61.64, 60.38, 62.89, total.hatchOfSet(), TWO_DECIMALS);
        assertEquals(count(row, "failed_n"), total.eggs(Fate.UNACCOUNTED));
        assertTrue(total.fertility().isEmpty());
        assertTrue(total.hatchOfFertile().isEmpty());
    }

    /** What the abstract calls dead embryos are the infertile: eggs less fertilised. */
    @Test
    void largePheasantFlock_closes_whenItsDeadEmbryosAreInfertile() {
        var row = rows("pheasant_large_flock_totals").getFirst();
        int infertile = count(row, "labelled_dead_embryos_n");
        var diary = hatch(count(row, "eggs_examined_n"), count(row, "chicks_hatched_n"), 0, 0);
        diary.note(day(8), look("1", 1, FindingCount.removed(Finding.CLEAR, infertile)));
        diary.note(day(9), open(TRAY, infertile, null, as(BreakOutClass.INFERTILE, infertile)));
        var total = RateReport.of(diary.picture(), Dimension.NONE).total();
        assertEquals(count(row, "fertilised_n"), total.fertility().count());
        assertEquals(81.41, total.hatchOfFertile().pct(), TWO_DECIMALS);
        assertEquals(72.02, total.hatchOfSet().pct(), TWO_DECIMALS);
        assertEquals(35550, total.eggs(Fate.UNACCOUNTED));
        assertEquals(35550, total.fertility().count() - total.bounds().low().count());
    }

    @Test
    void quailEggs_hatchLess_byStorageDays() {
        var diary = new Diary();
        var rows = rows("quail_storage_cold_counts");
        for (int i = 0; i < rows.size(); i++) {
            var laid = MONDAY.toLocalDate().minusDays(count(rows.get(i), "storage_days"));
            var lot = Lot.of(pen("Q"), Species.COTURNIX, laid, laid, count(rows.get(i), "derived_eggs_n"));
            diary.note(MONDAY, setting(Integer.toString(i), load(1, lot)));
            diary.note(
                    day(18),
                    pull(Scope.ofSet(set(Integer.toString(i))), Pull.LAST, count(rows.get(i), "derived_hatched_n")));
        }
        var groups = RateReport.of(diary.picture(), Dimension.STORAGE_DAYS).groups();
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(text(rows.get(i), "storage_days"), groups.get(i).key());
            assertEquals(
                    number(rows.get(i), "hatchability_pct"),
                    groups.get(i).hatchOfSet().pct(),
                    1e-9);
        }
    }

    /** Manly 1978: boxes scatter thirteen times as much as luck, so four of five places are like the rest. */
    @Test
    void troutEggs_showOnePlaceThatIsHardlyLuck_whenBoxesMayScatter() {
        var diary = new Diary();
        for (var row : rows("trout_egg_survival")) {
            var week = text(row, "period_weeks");
            var set = week + "-" + text(row, "location");
            diary.note(MONDAY, setting(set, load(1, lot(text(row, "location"), count(row, "eggs_n")))));
            int dead = count(row, "eggs_n") - count(row, "surviving_n");
            diary.note(day(8), look(set, 1, FindingCount.removed(Finding.CLEAR, dead)));
        }
        var report = RateReport.of(diary.picture(), Dimension.PEN);
        assertEquals(new Rate(1627, 2226), report.total().fertility());
        assertEquals(18.06, report.groups().get(4).fertility().pct(), TWO_DECIMALS);
        var contrasts = Contrasts.fertility(diary.picture(), Dimension.PEN);
        assertEquals(13.109219400845507, contrasts.scatter().factor(), 1e-9);
        for (var contrast : contrasts.contrasts()) {
            assertEquals(
                    contrast.key().equals("5") ? Verdict.HARDLY_LUCK : Verdict.COULD_BE_LUCK,
                    contrast.verdict(),
                    contrast.key());
            // Without scatter every one of them would be called real.
            assertTrue(eggwright.stats.chances.RateDifference.of(contrast.group(), contrast.rest(), 0.95)
                            .scoreChance()
                    < 0.001);
        }
    }
}
