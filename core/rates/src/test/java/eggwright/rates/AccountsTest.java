package eggwright.rates;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.entry.EggsGathered;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Pull;
import eggwright.book.entry.RejectReason;
import eggwright.book.entry.Rejected;
import eggwright.book.entry.Scope;
import eggwright.book.picture.Fate;
import eggwright.book.picture.LoadRef;
import eggwright.rates.account.AccountLine;
import eggwright.rates.account.AccountLines;
import eggwright.rates.account.DeathWindow;
import eggwright.rates.account.DeathWindows;
import eggwright.rates.eggroom.RejectRate;
import eggwright.rates.eggroom.RejectRates;
import eggwright.trade.BreakOutClass;
import eggwright.trade.DayRange;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import eggwright.units.Rate;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One set's account, when its dead died, and what the egg room refused. */
class AccountsTest {
    private static Diary hatched() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50)), load(2, lot("9", 40))));
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(24), pull(Scope.ofSet(set("14")), Pull.MORE_TO_COME, 70));
        return diary;
    }

    @Test
    void lines_ofASet_addUpToItsEggs() {
        var lines = AccountLines.ofSet(hatched().picture(), set("14"));
        assertEquals(
                List.of(
                        new AccountLine(Fate.CLEAR_UNOPENED, 5),
                        new AccountLine(Fate.SALEABLE, 70),
                        new AccountLine(Fate.IN_SETTER, 15)),
                lines.lines());
        assertEquals(90, lines.eggsSet());
        assertEquals(0, lines.countedWithOthers());
    }

    @Test
    void lines_ofALoadOrPen_showWhatWasCountedWithOthers_whole() {
        var picture = hatched().picture();
        var load = AccountLines.ofLoad(picture, new LoadRef(set("14"), tray(1)));
        assertEquals(List.of(new AccountLine(Fate.CLEAR_UNOPENED, 5)), load.lines());
        assertEquals(45, load.countedWithOthers());
        assertEquals(List.of(new AccountLine(Fate.SALEABLE, 70), new AccountLine(Fate.IN_SETTER, 15)), load.together());
        assertEquals(load, AccountLines.ofPen(picture, pen("4")));
        assertEquals(0, AccountLines.ofSet(picture, set("no such set")).eggsSet());
    }

    @Test
    void expectedSplit_addsUpToTheEggs_ofEverySpecies() {
        for (var species : Species.values()) {
            var losses = SpeciesProfile.of(species).losses();
            var split = AccountLines.ofSet(hatched().picture(), set("14"))
                    .expected(any -> SpeciesProfile.of(species))
                    .eggs();
            assertEquals(
                    90, split.values().stream().mapToDouble(Double::doubleValue).sum(), 1e-9, species.word());
            assertEquals(90 * losses.infertileOfSet().value(), split.getOrDefault(Fate.INFERTILE, 0.0), 1e-9);
            assertTrue(split.values().stream().allMatch(e -> e >= 0), species.word());
        }
    }

    /** Pheasant early dead: days 1 to 4 (DW2001, as the trade tables have it), so all of it is past on day 8. */
    @Test
    void expectedSplit_byADay_holdsWhatHasHappenedByThen_andTheRestStillIn() {
        var lines = AccountLines.ofSet(hatched().picture(), set("14"));
        var guess = SpeciesProfile.of(Species.PHEASANT).losses();
        var end = lines.expected(SpeciesProfile::of).eggs();
        var set = lines.expectedBy(0, SpeciesProfile::of).eggs();
        var looked = lines.expectedBy(8, SpeciesProfile::of).eggs();
        assertEquals(90, set.getOrDefault(Fate.IN_SETTER, 0.0), 1e-9);
        assertEquals(90 * guess.infertileOfSet().value(), looked.getOrDefault(Fate.INFERTILE, 0.0), 1e-9);
        assertEquals(end.getOrDefault(Fate.EARLY_DEAD, 0.0), looked.getOrDefault(Fate.EARLY_DEAD, 0.0), 1e-9);
        assertEquals(4.0 / 16 * end.getOrDefault(Fate.MID_DEAD, 0.0), looked.getOrDefault(Fate.MID_DEAD, 0.0), 1e-9);
        assertEquals(0, looked.getOrDefault(Fate.LATE_DEAD, 0.0), 1e-9);
        for (int day = 0; day < 30; day++) {
            var split = lines.expectedBy(day, SpeciesProfile::of).eggs();
            assertEquals(
                    90, split.values().stream().mapToDouble(Double::doubleValue).sum(), 1e-9);
            assertTrue(split.values().stream().allMatch(e -> e >= 0), "day " + day);
        }
    }

    /** Pheasant classes of death: 1 to 4, 5 to 20, 21 to 25 (DW2001, as the trade tables have it). */
    @Test
    void deadAtTheLamp_haveAClass_onlyWhenTheWindowFitsOne() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50))));
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.BLOOD_RING, 2)));
        diary.note(day(18), look("14", 1, FindingCount.removed(Finding.DEAD, 3)));
        diary.note(day(22), look("14", 1, FindingCount.removed(Finding.DEAD, 1)));
        var windows = DeathWindows.of(diary.picture(), set("14"), SpeciesProfile::of);
        assertEquals(
                List.of(new DayRange(1, 8), new DayRange(8, 18), new DayRange(18, 22)),
                windows.stream().map(DeathWindow::days).toList());
        assertEquals(
                List.of(
                        new DeathWindow.DaysOnly(),
                        new DeathWindow.OneClass(BreakOutClass.MID_DEAD),
                        new DeathWindow.DaysOnly()),
                windows.stream().map(DeathWindow::stage).toList());
        assertEquals(List.of(2, 3, 1), windows.stream().map(DeathWindow::eggs).toList());
    }

    @Test
    void rejects_areOfAllGathered_byPenAndWeek() {
        var diary = new Diary();
        gather(diary, "4", LocalDate.of(2027, 3, 29), 18, 2);
        gather(diary, "4", LocalDate.of(2027, 4, 6), 9, 1);
        gather(diary, "10", LocalDate.of(2027, 3, 30), 20, 0);
        var picture = diary.picture();
        assertEquals(
                List.of(
                        new RejectRate("4", "2027-W13", new Rate(2, 20)),
                        new RejectRate("4", "2027-W14", new Rate(1, 10)),
                        new RejectRate("10", "2027-W13", new Rate(0, 20))),
                RejectRates.byPenAndWeek(picture));
        assertEquals(
                List.of(new RejectRate("4", "all", new Rate(3, 30)), new RejectRate("10", "all", new Rate(0, 20))),
                RejectRates.byPen(picture));
        assertEquals(
                List.of(
                        new RejectRate("all", "2027-W13", new Rate(2, 40)),
                        new RejectRate("all", "2027-W14", new Rate(1, 10))),
                RejectRates.byWeek(picture));
        assertEquals(new Rate(3, 50), RejectRates.total(picture));
    }

    private static void gather(Diary diary, String pen, LocalDate laid, int kept, int cracked) {
        diary.note(
                MONDAY,
                new EggsGathered(
                        pen(pen),
                        Species.PHEASANT,
                        laid,
                        laid,
                        kept,
                        List.of(new Rejected(RejectReason.CRACKED, cracked))));
    }
}
