package eggwright.rates;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.diary.SeasonOfSlips;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.fold.Ledger;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.invented.answer.TrueFate;
import eggwright.invented.season.Season;
import eggwright.invented.truth.LampTruth;
import eggwright.invented.truth.NotebookTruth;
import eggwright.invented.truth.TakeOffTruth;
import eggwright.invented.truth.Truth;
import eggwright.rates.candler.Candler;
import eggwright.rates.candler.CandlerReport;
import eggwright.rates.candler.ChicksLost;
import eggwright.rates.candler.NotTold;
import eggwright.trade.BreakOutClass;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Rate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Evenings at the lamp, and what opened eggs told of them. A pheasant is early dead on days 1 to 4, mid dead on 5 to 20. */
class CandlersTest {
    private static final Scope TRAY_1 = Scope.ofLoad(set("14"), tray(1));

    private static Diary twoTrays() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50)), load(2, lot("9", 40))));
        return diary;
    }

    private static CandlerReport report(Diary diary) {
        var ledger = diary.ledger();
        return CandlerReport.of(ledger.picture(), ledger.inOrder(), Set.of(), SpeciesProfile::of);
    }

    private static Candler of(Diary diary, String who) {
        return report(diary).people().stream()
                .filter(c -> c.who().text().equals(who))
                .findFirst()
                .orElseThrow();
    }

    private static FindingCount clears(int count) {
        return FindingCount.removed(Finding.CLEAR, count);
    }

    private static void hatch(Diary diary, int tray, int saleable) {
        diary.note(day(21), transfer("14", tray));
        diary.note(day(24), pull(Scope.ofLoad(set("14"), tray(tray)), Pull.LAST, saleable));
    }

    @Test
    void falseClear_isAnEggThatHadGrownToTheDayOfTheLook() {
        var diary = twoTrays();
        var look = diary.noteBy("Alder", day(8), look("14", 1, new FindingCount(Finding.CLEAR, 8, 2, 6)));
        diary.note(
                day(8).plusHours(1),
                open(
                        TRAY_1.withLook(look),
                        6,
                        6,
                        as(BreakOutClass.INFERTILE, 3),
                        as(BreakOutClass.EARLY_DEAD, 2),
                        as(BreakOutClass.MID_DEAD, 1)));
        var clears = of(diary, "Alder").falseClears();
        assertEquals(8, clears.called());
        // The early dead had died before day 8, too early to see: called clear rightly.
        assertEquals(new Rate(1, 6), clears.falseClear());
        assertEquals(new Rate(3, 6), clears.developed());
        assertEquals(2, clears.untold());
    }

    @Test
    void falseClears_costChicks_atTheHatchOfTheRest() {
        var clears = new eggwright.rates.candler.FalseClears(30, new Rate(2, 20), new Rate(5, 20));
        var chicks = clears.chicks(new Rate(320, 400)).orElseThrow();
        assertEquals(new ChicksLost(1.6, 0.8, chicks.unopenedLow(), chicks.unopenedHigh()), chicks);
        assertEquals(2.4, chicks.all(), 1e-12);
        // Wilson’s limits of 2 of 20, worked by hand: (0.1 + 0.0960) / 1.1921 -/+ 1.6442 sqrt(0.0045 + 0.0024).
        // form).
        assertEquals(10 * 0.0279 * 0.8, chicks.unopenedLow(), 0.001);
        assertEquals(10 * 0.3010 * 0.8, chicks.unopenedHigh(), 0.001);
        assertTrue(clears.chicks(new Rate(0, 0)).isEmpty());
        assertTrue(new eggwright.rates.candler.FalseClears(30, new Rate(0, 0), new Rate(0, 0))
                .chicks(new Rate(320, 400))
                .isEmpty());
    }

    @Test
    void missedClear_isAnInfertileEggThatWasLeftIn() {
        var diary = twoTrays();
        diary.noteBy("Alder", day(8), look("14", 1, clears(5)));
        hatch(diary, 1, 40);
        diary.note(day(25), open(TRAY_1, 5, null, as(BreakOutClass.INFERTILE, 2), as(BreakOutClass.LATE_DEAD, 3)));
        // Nobody said whether clears or left-over eggs were opened: held against nobody.
        var untold = of(diary, "Alder");
        assertTrue(untold.missedClears().missed().isEmpty());
        assertTrue(untold.falseClears().falseClear().isEmpty());
        assertEquals(
                Map.of(NotTold.NOT_OPENED_AT_THE_END, 1), untold.missedClears().leftOut());

        diary = twoTrays();
        diary.noteBy("Alder", day(8), look("14", 1, clears(5)));
        hatch(diary, 1, 40);
        diary.note(day(25), open(TRAY_1, 5, 0, as(BreakOutClass.INFERTILE, 2), as(BreakOutClass.LATE_DEAD, 3)));
        var missed = of(diary, "Alder").missedClears();
        assertEquals(new Rate(2, 7), missed.missed());
        assertEquals(Basis.APPARENT, missed.basis());
        assertEquals(0, missed.undecided());
        assertEquals(1, missed.looks());
        assertEquals(2 * (24 - 8), missed.eggDays());
        assertEquals(2, missed.hatcherPlaces());
        // 50 set, 5 clears that were not opened, 2 infertile.
        assertEquals(new Rate(40, 43), report(diary).hatchOfFertile());
    }

    @Test
    void missedClear_isEveryPersonsWhoLeftItIn_andItsDaysAreSharedOut() {
        var diary = twoTrays();
        var first = diary.noteBy("Alder", day(8), look("14", 1, new FindingCount(Finding.CLEAR, 5, 0, 5)));
        diary.note(
                day(8).plusHours(1),
                open(TRAY_1.withLook(first), 5, 5, as(BreakOutClass.INFERTILE, 4), as(BreakOutClass.EARLY_DEAD, 1)));
        var second = diary.noteBy("Wren", day(14), look("14", 1, new FindingCount(Finding.CLEAR, 1, 0, 1)));
        diary.note(day(14).plusHours(1), open(TRAY_1.withLook(second), 1, 1, as(BreakOutClass.INFERTILE, 1)));
        hatch(diary, 1, 42);
        diary.note(day(24).plusHours(2), open(TRAY_1, 2, 0, as(BreakOutClass.INFERTILE, 2)));
        var alder = of(diary, "Alder").missedClears();
        // The one that Wren found and the two at the end, against four taken out; the early dead was no miss.
        assertEquals(new Rate(3, 7), alder.missed());
        assertEquals(Basis.OPENED, alder.basis());
        assertEquals(3 * 6, alder.eggDays());
        assertEquals(0, alder.hatcherPlaces());
        var wren = of(diary, "Wren").missedClears();
        assertEquals(new Rate(2, 3), wren.missed());
        assertEquals(2 * 10, wren.eggDays());
        assertEquals(2, wren.hatcherPlaces());
    }

    @Test
    void missedClears_areToldOfWhoLookedAtAllTrays_whenTheyWereOpenedTogether() {
        var diary = twoTrays();
        diary.noteBy("Alder", day(8), look("14", 1, clears(5)));
        diary.noteBy("Alder", day(8).plusMinutes(6), look("14", 2, clears(4)));
        diary.note(day(21), transfer("14", 1, 2));
        diary.note(day(24), pull(Scope.ofSet(set("14")), Pull.LAST, 76));
        diary.note(day(24).plusHours(1), open(Scope.ofSet(set("14")), 5, 0, as(BreakOutClass.INFERTILE, 3)));
        // Two of the five were opened without a class, so that nobody knows what they were.
        assertEquals(
                Map.of(NotTold.NOT_OPENED_AT_THE_END, 2),
                of(diary, "Alder").missedClears().leftOut());
        diary.note(day(24).plusHours(2), open(Scope.ofSet(set("14")), 2, 0, as(BreakOutClass.LATE_DEAD, 2)));
        var missed = of(diary, "Alder").missedClears();
        assertEquals(new Rate(3, 12), missed.missed());
        assertEquals(2, missed.looks());
    }

    @Test
    void missedClears_areSplitBetweenNobody_whenTwoPeopleLookedAtATrayEach() {
        var diary = twoTrays();
        diary.noteBy("Alder", day(8), look("14", 1, clears(5)));
        diary.noteBy("Wren", day(8).plusMinutes(6), look("14", 2, clears(4)));
        diary.note(day(21), transfer("14", 1, 2));
        diary.note(day(24), pull(Scope.ofSet(set("14")), Pull.LAST, 78));
        diary.note(day(24).plusHours(1), open(Scope.ofSet(set("14")), 3, 0, as(BreakOutClass.INFERTILE, 3)));
        for (var who : List.of("Alder", "Wren")) {
            var missed = of(diary, who).missedClears();
            assertEquals(0, missed.missed().count(), who);
            assertEquals(3, missed.undecided(), who);
        }
    }

    @Test
    void missedClears_areNotTold_whereTheBookCannotTellThem() {
        var diary = twoTrays();
        diary.noteBy("Part", day(8), new Looked(TRAY_1, 20, null, List.of(clears(2)), 0, null));
        diary.noteBy("Whole", day(9), look("14", 1, clears(2)));
        assertEquals(Map.of(NotTold.NOT_ALL_EGGS, 1), leftOut(diary, "Part"));
        assertEquals(Map.of(NotTold.STILL_IN, 1), leftOut(diary, "Whole"));
        diary.noteBy("Waiting", day(10), look("14", 1, FindingCount.left(Finding.CLEAR, 1)));
        assertEquals(Map.of(NotTold.CLEARS_LEFT_IN, 1), leftOut(diary, "Waiting"));
        hatch(diary, 1, 40);
        assertEquals(Map.of(NotTold.NOT_OPENED_AT_THE_END, 1), leftOut(diary, "Whole"));
        assertTrue(of(diary, "Whole").missedClears().missed().isEmpty());
    }

    private static Map<NotTold, Integer> leftOut(Diary diary, String who) {
        return of(diary, who).missedClears().leftOut();
    }

    @Test
    void openings_areUndecided_whenClearsAndLeftOversWereOpenedTogether() {
        var diary = twoTrays();
        diary.noteBy("Alder", day(8), look("14", 1, clears(5)));
        hatch(diary, 1, 42);
        diary.note(day(25), open(TRAY_1, 6, 3, as(BreakOutClass.INFERTILE, 4), as(BreakOutClass.LATE_DEAD, 2)));
        var alder = of(diary, "Alder");
        assertTrue(alder.falseClears().falseClear().isEmpty());
        assertEquals(new Rate(0, 5), alder.missedClears().missed());
        assertEquals(4, alder.missedClears().undecided());
    }

    /** Two keepers with known faults: what the opened eggs tell of them is what was done. */
    @ParameterizedTest
    @ValueSource(longs = {3, 14, 159})
    void people_areToldTheFaultsThatTheSeasonWasGiven(long seed) {
        var lamp = new LampTruth(List.of(8, 14), LampTruth.AtTransfer.NOT_LOOKED_AT, 12, 0, 3, 0, 0, 0, 1, 100);
        var truth = Truth.PLAIN
                .with(lamp)
                .with(new TakeOffTruth(TakeOffTruth.CountedBy.LOAD, 2, 100, 0))
                .with(new NotebookTruth(0, 0, 0, 0, 0, 0, 0));
        var season = Season.of(truth, seed, LocalDate.of(2027, 3, 22));
        var ledger = Ledger.of(season.entries());
        var people = CandlerReport.of(ledger.picture(), ledger.inOrder(), Set.of(), SpeciesProfile::of)
                .people();
        assertEquals(2, people.size());
        // Before day 11 a live egg that is pulled is taken for a clear.
        long pulledAsClear = season.answers()
                .eggs()
                .filter(egg -> egg.fate() == TrueFate.TAKEN_OUT_ALIVE && egg.day() == 8)
                .count();
        assertTrue(pulledAsClear > 50);
        assertEquals(
                pulledAsClear,
                people.stream()
                        .mapToLong(c -> c.falseClears().falseClear().count())
                        .sum());
        var missed = people.stream().map(c -> c.missedClears().missed()).reduce(new Rate(0, 0), Rate::plus);
        assertTrue(missed.of() > 300, missed.toString());
        // Three Monte Carlo errors round the 12 in 100 that it was given.
        assertEquals(0.12, missed.share(), 3 * Math.sqrt(0.12 * 0.88 / missed.of()), "seed " + seed + " " + people);
    }

    /** Whatever was noted, in whatever order: no clear is lost or doubled, and nobody is charged with more than there was. */
    @ParameterizedTest
    @MethodSource("eggwright.rates.RateReportTest#seeds")
    void people_areChargedWithNoMoreThanThereWas_whateverWasNoted(long seed) {
        var diary = SeasonOfSlips.of(seed);
        var report = report(diary);
        var entries = new ArrayList<>(diary.entries());
        Collections.shuffle(entries, new Random(seed));
        var shuffled = Ledger.of(entries);
        assertEquals(
                report,
                CandlerReport.of(shuffled.picture(), shuffled.inOrder(), Set.of(), SpeciesProfile::of),
                "seed " + seed);
        var accounts = diary.picture().accounts();
        int clears = accounts.stream()
                .flatMap(account -> account.atTheLamp().stream())
                .filter(f -> f.fate() == Fate.CLEAR_UNOPENED)
                .mapToInt(FateCount::eggs)
                .sum();
        int infertile = accounts.stream()
                .mapToInt(account -> account.eggs(Fate.INFERTILE))
                .sum();
        assertEquals(
                clears,
                report.people().stream().mapToInt(c -> c.falseClears().called()).sum());
        for (var candler : report.people()) {
            var missed = candler.missedClears();
            assertTrue(candler.falseClears().untold() >= 0, candler.toString());
            assertTrue(missed.missed().count() <= (long) infertile * candler.looks(), candler.toString());
            assertTrue(missed.eggDays() >= 0 && missed.hatcherPlaces() <= infertile, candler.toString());
            assertEquals(
                    candler.looks(),
                    missed.looks()
                            + missed.leftOut().values().stream()
                                    .mapToInt(Integer::intValue)
                                    .sum());
        }
    }

    @Test
    void looksThatOnlyMark_areLeftAside() {
        var diary = twoTrays();
        var blind = diary.noteBy("Alder", day(8), look("14", 1));
        var ledger = diary.ledger();
        assertEquals(
                List.of(),
                CandlerReport.of(ledger.picture(), ledger.inOrder(), Set.of(blind), SpeciesProfile::of)
                        .people());
    }
}
