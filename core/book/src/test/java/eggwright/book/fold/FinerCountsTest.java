package eggwright.book.fold;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import eggwright.book.diary.Diary;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Pull;
import eggwright.book.entry.TakenOff;
import eggwright.book.name.EntryId;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import eggwright.trade.BreakOutClass;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A count of one tray, pen or basket that follows a count of more: what it saw is known of that tray, what is left is
 * still known as a sum only, and no tray ever gets more than it held.
 */
class FinerCountsTest {
    private static final Parcels ONE = Parcels.of(parcel(1, 0));
    private static final Parcels TWO = Parcels.of(parcel(2, 0));
    private static final Parcels BOTH = new Parcels(List.of(parcel(1, 0), parcel(2, 0)));

    private static ParcelId parcel(int tray, int lot) {
        return new ParcelId(new LoadRef(set("14"), Diary.tray(tray)), lot);
    }

    private static Diary twoTrays(int inOne, int inTwo) {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", inOne)), load(2, lot("9", inTwo))));
        return diary;
    }

    private static int eggs(Diary diary, Fate fate, Parcels of) {
        return diary.picture().accounts().getFirst().fates().stream()
                .filter(f -> f.fate() == fate && f.of().equals(of))
                .mapToInt(FateCount::eggs)
                .sum();
    }

    private static void addsUp(Diary diary, DiscrepancyKind... doubts) {
        var picture = diary.picture();
        var account = picture.accounts().getFirst();
        assertEquals(
                account.eggsSet(),
                account.fates().stream().mapToInt(FateCount::eggs).sum());
        assertEquals(
                account.eggsSet(),
                account.atTheLamp().stream().mapToInt(FateCount::eggs).sum());
        assertEquals(
                Arrays.asList(doubts),
                picture.discrepancies().stream().map(d -> d.kind()).toList());
    }

    @Test
    void breakOut_ofOneTray_isKnownOfThatTray_thoughTheSetWasTakenOffTogether() {
        var diary = twoTrays(50, 50);
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 3)));
        diary.note(day(24), pull(whole("14"), Pull.LAST, 72));
        diary.note(day(25), open(tray("14", 1), 13, 5, as(BreakOutClass.INFERTILE, 5), as(BreakOutClass.LATE_DEAD, 8)));
        assertEquals(8, eggs(diary, Fate.LATE_DEAD, ONE));
        assertEquals(5, eggs(diary, Fate.INFERTILE, ONE));
        assertEquals(3, eggs(diary, Fate.CLEAR_UNOPENED, TWO));
        assertEquals(72, eggs(diary, Fate.SALEABLE, BOTH));
        assertEquals(12, eggs(diary, Fate.UNACCOUNTED, BOTH));
        addsUp(diary);
        diary.note(day(25).plusHours(1), open(tray("14", 2), 12, 0, as(BreakOutClass.PIPPED_DEAD, 12)));
        assertEquals(12, eggs(diary, Fate.PIPPED_DEAD, TWO));
        assertEquals(0, eggs(diary, Fate.UNACCOUNTED, BOTH));
        addsUp(diary);
    }

    @Test
    void breakOut_ofOneTray_findsNoMoreThanTheTrayHeld() {
        var diary = twoTrays(10, 90);
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 4)));
        diary.note(day(24), pull(whole("14"), Pull.LAST, 60));
        // Six eggs were in it; nine cannot have been opened.
        diary.note(day(25), open(tray("14", 1), 9, 0, as(BreakOutClass.LATE_DEAD, 9)));
        assertEquals(6, eggs(diary, Fate.LATE_DEAD, ONE));
        assertEquals(30, eggs(diary, Fate.UNACCOUNTED, BOTH));
        addsUp(diary, DiscrepancyKind.OPENED_MORE_THAN_THERE);
    }

    @Test
    void breakOuts_inTurn_leaveRoomForEachOther() {
        var diary = twoTrays(10, 90);
        diary.note(day(24), pull(whole("14"), Pull.LAST, 80));
        // Of the 20 left at most 10 were of tray 1; then the next two of it cannot be.
        diary.note(day(25), open(tray("14", 1), 10, 0, as(BreakOutClass.LATE_DEAD, 10)));
        diary.note(day(26), open(tray("14", 1), 2, 0, as(BreakOutClass.LATE_DEAD, 2)));
        diary.note(day(27), open(tray("14", 2), 10, 0, as(BreakOutClass.LATE_DEAD, 10)));
        assertEquals(10, eggs(diary, Fate.LATE_DEAD, ONE));
        assertEquals(10, eggs(diary, Fate.LATE_DEAD, TWO));
        assertEquals(80, eggs(diary, Fate.SALEABLE, BOTH));
        addsUp(diary, DiscrepancyKind.OPENED_MORE_THAN_THERE);
    }

    @Test
    void pulls_byTrayAfterBySet_areKnownOfTheTray_andEndWithTheLastOfBoth() {
        var diary = twoTrays(50, 50);
        diary.note(day(23), pull(whole("14"), Pull.MORE_TO_COME, 60));
        diary.note(day(24), pull(tray("14", 1), Pull.LAST, 10));
        assertEquals(60, eggs(diary, Fate.SALEABLE, BOTH));
        assertEquals(10, eggs(diary, Fate.SALEABLE, ONE));
        // How many of the 30 left are of tray 1 nobody knows: they wait for the last pull of tray 2.
        assertEquals(30, eggs(diary, Fate.IN_SETTER, BOTH));
        assertEquals(LoadPhase.OUT, diary.load("14", 1).phase());
        assertEquals(LoadPhase.IN_SETTER, diary.load("14", 2).phase());
        diary.note(day(25), pull(tray("14", 2), Pull.LAST, 5));
        assertEquals(5, eggs(diary, Fate.SALEABLE, TWO));
        assertEquals(25, eggs(diary, Fate.UNACCOUNTED, BOTH));
        addsUp(diary);
    }

    @Test
    void lastPull_ofOneTray_leavesTheOtherNoMoreThanItHeld() {
        var diary = twoTrays(50, 10);
        diary.note(day(23), pull(whole("14"), Pull.MORE_TO_COME, 20));
        diary.note(day(24), pull(tray("14", 1), Pull.LAST, 5));
        // 35 are left, of which tray 2 can hold 10: 25 are surely of tray 1, and did not hatch.
        assertEquals(25, eggs(diary, Fate.UNACCOUNTED, ONE));
        assertEquals(10, eggs(diary, Fate.IN_SETTER, BOTH));
        addsUp(diary);
    }

    @Test
    void trays_areTransferredOneByOne_afterALookAtTheWholeSet() {
        var diary = twoTrays(50, 50);
        diary.note(day(8), look(whole("14"), FindingCount.removed(Finding.CLEAR, 8)));
        diary.note(day(21), transfer(into("A", "14", 1, null)));
        var halfWay = diary.picture().set(set("14")).orElseThrow();
        assertEquals(
                LoadPhase.IN_HATCHER, halfWay.load(Diary.tray(1)).orElseThrow().phase());
        assertEquals(
                LoadPhase.IN_SETTER, halfWay.load(Diary.tray(2)).orElseThrow().phase());
        diary.note(day(21).plusHours(1), transfer(into("B", "14", 2, null)));
        diary.note(day(24), pull(basket("B"), Pull.LAST, 40));
        diary.note(day(24), pull(basket("A"), Pull.LAST, 45));
        assertEquals(40, eggs(diary, Fate.SALEABLE, TWO));
        assertEquals(45, eggs(diary, Fate.SALEABLE, ONE));
        assertEquals(8, eggs(diary, Fate.CLEAR_UNOPENED, BOTH));
        // When tray 2 was done 52 were left, of which tray 1 can hold 50: two are surely of tray 2.
        assertEquals(2, eggs(diary, Fate.UNACCOUNTED, TWO));
        assertEquals(5, eggs(diary, Fate.UNACCOUNTED, BOTH));
        addsUp(diary);
    }

    @Test
    void countAtTransfer_tellsTheTraysApartAgain() {
        var diary = twoTrays(50, 50);
        diary.note(day(8), look(whole("14"), FindingCount.removed(Finding.CLEAR, 8)));
        diary.note(day(21), transfer(into("A", "14", 1, 44)));
        diary.note(day(21).plusHours(1), transfer(into("B", "14", 2, 48)));
        assertEquals(44, diary.load("14", 1).eggsNow());
        assertEquals(48, diary.load("14", 2).eggsNow());
        assertEquals(44, eggs(diary, Fate.IN_HATCHER, ONE));
        addsUp(diary);
    }

    @Test
    void tray_isPooledWhole_afterALookAtTheWholeSet_andTheOtherStaysWhereItIs() {
        var diary = twoTrays(50, 50);
        diary.note(day(8), look(whole("14"), FindingCount.removed(Finding.CLEAR, 8)));
        diary.note(day(9), pool("14", 1, 3, null));
        assertEquals(LoadPhase.OUT, diary.load("14", 1).phase());
        assertEquals(LoadPhase.IN_SETTER, diary.load("14", 2).phase());
        assertEquals(LoadPhase.IN_SETTER, diary.load("14", 3).phase());
        assertNull(diary.load("14", 2).eggsNow());
        diary.note(day(14), look("14", 3, FindingCount.removed(Finding.DEAD, 2)));
        assertEquals(2, eggs(diary, Fate.DEAD, ONE));
        addsUp(diary);
    }

    @Test
    void countedBefore_isNoContradiction_whereOnlyASumIsKnown() {
        var diary = twoTrays(50, 50);
        diary.note(day(8), look(whole("14"), FindingCount.removed(Finding.CLEAR, 8)));
        diary.note(day(14), counted(46));
        addsUp(diary);
        diary.note(day(15), counted(41));
        addsUp(diary, DiscrepancyKind.COUNT_DIFFERS);
        diary.note(day(16), counted(51));
        addsUp(diary, DiscrepancyKind.COUNT_DIFFERS, DiscrepancyKind.COUNT_DIFFERS);
    }

    private static eggwright.book.entry.Looked counted(int eggs) {
        return new eggwright.book.entry.Looked(tray("14", 1), null, eggs, List.of(), 0, null);
    }

    @Test
    void chicks_ofOnePen_areNoMoreThanItsEggs_inATrayThatNobodyCanTellApart() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 30), lot("9", 20))));
        diary.note(day(24), pull(tray("14", 1).withPen(pen("9")), Pull.MORE_TO_COME, 25));
        assertEquals(20, eggs(diary, Fate.SALEABLE, Parcels.of(parcel(1, 1))));
        addsUp(diary, DiscrepancyKind.MORE_OUT_THAN_IN);
    }

    @Test
    void lastPulls_penByPen_endAMixedTray() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 30), lot("9", 20))));
        diary.note(day(24), pull(tray("14", 1).withPen(pen("9")), Pull.LAST, 15));
        var mixed = new Parcels(List.of(parcel(1, 0), parcel(1, 1)));
        // 35 are left, of which pen 4 can have 30.
        assertEquals(5, eggs(diary, Fate.UNACCOUNTED, Parcels.of(parcel(1, 1))));
        assertEquals(30, eggs(diary, Fate.IN_SETTER, mixed));
        diary.note(day(24).plusHours(1), pull(tray("14", 1).withPen(pen("4")), Pull.LAST, 20));
        // All of pen 9 are known by now, so the ten left are of pen 4.
        assertEquals(10, eggs(diary, Fate.UNACCOUNTED, Parcels.of(parcel(1, 0))));
        addsUp(diary);
    }

    @Test
    void lateChick_ofOneTray_isKnownOfIt_thoughTheLastPullWasOfTheSet() {
        var diary = twoTrays(50, 50);
        diary.note(day(24), pull(whole("14"), Pull.LAST, 80));
        diary.note(day(25), pull(tray("14", 2), Pull.LAST, 1));
        assertEquals(1, eggs(diary, Fate.SALEABLE, TWO));
        assertEquals(19, eggs(diary, Fate.UNACCOUNTED, BOTH));
        addsUp(diary);
    }

    @Test
    void eggsOfOneClassOnly_stayAsFarApart_asTheyWere() {
        var diary = twoTrays(50, 50);
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 3)));
        diary.note(day(8), open(whole("14"), 8, 8, as(BreakOutClass.INFERTILE, 8)));
        assertEquals(5, eggs(diary, Fate.INFERTILE, ONE));
        assertEquals(3, eggs(diary, Fate.INFERTILE, TWO));
        addsUp(diary);
    }

    @Test
    void breakOut_ofACandlingEvening_opensWhatThatEveningTookOut() {
        var diary = twoTrays(50, 50);
        var evening = evening(diary, 8);
        diary.note(day(14), look("14", 1, FindingCount.removed(Finding.CLEAR, 2)));
        diary.note(
                day(15),
                open(
                        whole("14").withLook(evening),
                        6,
                        null,
                        as(BreakOutClass.INFERTILE, 4),
                        as(BreakOutClass.EARLY_DEAD, 2)));
        assertEquals(4, eggs(diary, Fate.INFERTILE, ONE));
        assertEquals(2, eggs(diary, Fate.EARLY_DEAD, ONE));
        assertEquals(2, eggs(diary, Fate.CLEAR_UNOPENED, ONE));
        addsUp(diary);
    }

    private static EntryId evening(Diary diary, int n) {
        return diary.note(day(n), look("14", 1, new FindingCount(Finding.CLEAR, 7, 0, 6)));
    }

    @Test
    void breakOut_namesWhatWasRemovedUnsorted_andAddsNoEgg() {
        var diary = twoTrays(50, 50);
        diary.note(day(8), new eggwright.book.entry.Looked(tray("14", 1), null, null, List.of(), 6, null));
        diary.note(
                day(9), open(tray("14", 1), 6, 0, as(BreakOutClass.INFERTILE, 5), as(BreakOutClass.CONTAMINATED, 1)));
        assertEquals(5, eggs(diary, Fate.INFERTILE, ONE));
        assertEquals(1, eggs(diary, Fate.CONTAMINATED, ONE));
        assertEquals(44, eggs(diary, Fate.IN_SETTER, ONE));
        addsUp(diary);
    }

    @Test
    void chicks_countedByEveryGrain_inSeveralPulls_addUp() {
        var diary = twoTrays(50, 50);
        diary.note(day(21), transfer(into("A", "14", 1, 25), into("B", "14", 1, 25), into("B", "14", 2, 50)));
        diary.note(day(23), pull(basket("A"), Pull.MORE_TO_COME, 10));
        diary.note(day(23).plusHours(1), pull(whole("14"), Pull.MORE_TO_COME, 30));
        diary.note(day(24), pull(tray("14", 2), Pull.MORE_TO_COME, 12));
        diary.note(day(24).plusHours(1), new TakenOff(whole("14").withPen(pen("4")), Pull.MORE_TO_COME, 3, 1, 1, 0));
        diary.note(day(25), pull(whole("14"), Pull.LAST, 4));
        assertEquals(13, eggs(diary, Fate.SALEABLE, ONE));
        assertEquals(12, eggs(diary, Fate.SALEABLE, TWO));
        assertEquals(34, eggs(diary, Fate.SALEABLE, BOTH));
        assertEquals(39, eggs(diary, Fate.UNACCOUNTED, BOTH));
        addsUp(diary);
    }
}
