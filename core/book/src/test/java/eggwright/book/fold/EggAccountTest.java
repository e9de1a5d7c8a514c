package eggwright.book.fold;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.EggAccount;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import eggwright.trade.BreakOutClass;
import java.util.List;
import org.junit.jupiter.api.Test;

class EggAccountTest {
    private static ParcelId parcel(int tray, int lot) {
        return new ParcelId(new LoadRef(set("14"), Diary.tray(tray)), lot);
    }

    private static EggAccount only(Ledger ledger) {
        var accounts = ledger.picture().accounts();
        assertEquals(1, accounts.size());
        var account = accounts.getFirst();
        assertEquals(
                account.eggsSet(),
                account.fates().stream().mapToInt(FateCount::eggs).sum(),
                "the fates add up to the eggs set");
        assertEquals(
                account.eggsSet(),
                account.atTheLamp().stream().mapToInt(FateCount::eggs).sum(),
                "and so do those at the lamp");
        return account;
    }

    @Test
    void account_followsOneTray_fromSettingToBreakOut() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        diary.note(
                day(8),
                look("14", 7, FindingCount.removed(Finding.CLEAR, 5), FindingCount.removed(Finding.BLOOD_RING, 1)));
        diary.note(day(21), transfer("14", 7));
        var load = Scope.ofLoad(set("14"), Diary.tray(7));
        diary.note(day(24), pull(load, Pull.LAST, 41));
        diary.note(
                day(25),
                open(
                        load,
                        9,
                        5,
                        as(BreakOutClass.INFERTILE, 4),
                        as(BreakOutClass.EARLY_DEAD, 1),
                        as(BreakOutClass.LATE_DEAD, 4)));

        var account = only(diary.ledger());
        assertEquals(4, account.eggs(Fate.INFERTILE));
        assertEquals(0, account.eggs(Fate.CLEAR_UNOPENED));
        assertEquals(1, account.eggs(Fate.BLOOD_RING));
        assertEquals(1, account.eggs(Fate.EARLY_DEAD));
        assertEquals(4, account.eggs(Fate.LATE_DEAD));
        assertEquals(41, account.eggs(Fate.SALEABLE));
        assertEquals(3, account.eggs(Fate.UNACCOUNTED));
        assertTrue(diary.ledger().picture().discrepancies().isEmpty());
    }

    @Test
    void chicks_countedBySet_areNeverSplitByTray() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50)), load(2, lot("9", 50))));
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 3)));
        diary.note(day(24), pull(Scope.ofSet(set("14")), Pull.MORE_TO_COME, 60));
        diary.note(day(25), pull(Scope.ofSet(set("14")), Pull.LAST, 12));

        var account = only(diary.ledger());
        var both = new Parcels(List.of(parcel(1, 0), parcel(2, 0)));
        assertEquals(5, eggs(account, Parcels.of(parcel(1, 0)), Fate.CLEAR_UNOPENED));
        assertEquals(3, eggs(account, Parcels.of(parcel(2, 0)), Fate.CLEAR_UNOPENED));
        assertEquals(72, eggs(account, both, Fate.SALEABLE));
        assertEquals(20, eggs(account, both, Fate.UNACCOUNTED));
    }

    private static int eggs(EggAccount account, Parcels of, Fate fate) {
        return account.fates().stream()
                .filter(f -> f.fate() == fate && f.of().equals(of))
                .mapToInt(FateCount::eggs)
                .sum();
    }

    @Test
    void pooledTrays_stayTogether_afterTheyWereCountedTogether() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(3, lot("4", 30)), load(5, lot("9", 20))));
        diary.note(day(8), look("14", 3, FindingCount.removed(Finding.CLEAR, 12)));
        diary.note(day(8), pool("14", 3, 5, null));
        diary.note(day(14), look("14", 5, FindingCount.removed(Finding.DEAD, 2)));

        var ledger = diary.ledger();
        var account = only(ledger);
        var both = new Parcels(List.of(parcel(3, 0), parcel(5, 0)));
        assertEquals(12, eggs(account, Parcels.of(parcel(3, 0)), Fate.CLEAR_UNOPENED));
        assertEquals(2, eggs(account, both, Fate.DEAD));
        assertEquals(36, eggs(account, both, Fate.IN_SETTER));
        var set = ledger.picture().set(set("14")).orElseThrow();
        assertEquals(36, set.load(Diary.tray(5)).orElseThrow().eggsNow());
        assertEquals(LoadPhase.OUT, set.load(Diary.tray(3)).orElseThrow().phase());
    }

    @Test
    void mixedLoad_withoutPlaces_isOneGroup_butMarkedEggsAreTold() {
        var diary = new Diary();
        var marked = new eggwright.book.entry.Lot(
                pen("9"), eggwright.trade.Species.PHEASANT, null, null, 20, "blue dot", List.of());
        diary.note(MONDAY, setting("14", load(1, lot("4", 20), marked)));
        diary.note(
                day(8),
                new eggwright.book.entry.Looked(
                        Scope.ofLoad(set("14"), Diary.tray(1)).withPen(pen("9")),
                        null,
                        null,
                        List.of(FindingCount.removed(Finding.CLEAR, 4)),
                        0,
                        null));
        var account = only(diary.ledger());
        assertEquals(4, eggs(account, Parcels.of(parcel(1, 1)), Fate.CLEAR_UNOPENED));
        assertEquals(16, eggs(account, Parcels.of(parcel(1, 1)), Fate.IN_SETTER));
        assertEquals(20, eggs(account, Parcels.of(parcel(1, 0)), Fate.IN_SETTER));
    }

    @Test
    void moreOutThanIn_isShown_andTheAccountStillAddsUp() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        diary.note(day(8), look("14", 7, FindingCount.removed(Finding.CLEAR, 62)));
        var ledger = diary.ledger();
        assertEquals(54, only(ledger).eggs(Fate.CLEAR_UNOPENED));
        var kinds = ledger.picture().discrepancies().stream().map(d -> d.kind()).toList();
        assertEquals(List.of(DiscrepancyKind.MORE_SEEN_THAN_IN, DiscrepancyKind.MORE_OUT_THAN_IN), kinds);
    }

    @Test
    void count_fromBeforeTheSet_isKeptAndShown() {
        var diary = new Diary();
        diary.note(MONDAY.minusDays(2), look("14", 7, FindingCount.removed(Finding.CLEAR, 2)));
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        var ledger = diary.ledger();
        assertEquals(2, only(ledger).eggs(Fate.CLEAR_UNOPENED));
        assertEquals(
                DiscrepancyKind.BEFORE_THE_SET,
                ledger.picture().discrepancies().getFirst().kind());
    }

    @Test
    void clearsOpenedInPart_forTheWholeSet_leaveTheLampAccountByTray() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50)), load(2, lot("9", 50))));
        diary.note(day(8), look("14", 1, FindingCount.removed(Finding.CLEAR, 5)));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 3)));
        diary.note(
                day(8),
                open(Scope.ofSet(set("14")), 6, 6, as(BreakOutClass.INFERTILE, 4), as(BreakOutClass.EARLY_DEAD, 2)));
        var account = only(diary.ledger());
        var both = new Parcels(List.of(parcel(1, 0), parcel(2, 0)));
        assertEquals(4, eggs(account, both, Fate.INFERTILE));
        assertEquals(2, eggs(account, both, Fate.CLEAR_UNOPENED));
        var lamp = account.atTheLamp().stream()
                .filter(f -> f.fate() == Fate.CLEAR_UNOPENED)
                .filter(f -> f.of().equals(Parcels.of(parcel(1, 0))))
                .mapToInt(FateCount::eggs)
                .sum();
        assertEquals(5, lamp);
    }

    @Test
    void lateChick_isTakenFromTheUnaccounted() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50))));
        var load = Scope.ofLoad(set("14"), Diary.tray(1));
        diary.note(day(24), pull(load, Pull.LAST, 40));
        diary.note(day(25), pull(load, Pull.LAST, 3));
        var account = only(diary.ledger());
        assertEquals(43, account.eggs(Fate.SALEABLE));
        assertEquals(7, account.eggs(Fate.UNACCOUNTED));
        assertTrue(diary.ledger().picture().discrepancies().isEmpty());
    }

    @Test
    void eggsNow_isNotGuessed_whenLoadsWereCountedTogether() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50)), load(2, lot("9", 50))));
        diary.note(day(24), pull(Scope.ofSet(set("14")), Pull.MORE_TO_COME, 60));
        var set = diary.ledger().picture().set(set("14")).orElseThrow();
        assertNull(set.load(Diary.tray(1)).orElseThrow().eggsNow());
    }

    @Test
    void basket_ofTwoSets_joinsTheirAccounts_inAnyOrderOfArrival() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50))));
        diary.note(MONDAY.plusDays(1), setting("15", load(2, lot("9", 40))));
        var basket = new eggwright.book.name.BasketName("B");
        diary.note(
                day(21),
                new eggwright.book.entry.Transferred(
                        null,
                        List.of(
                                new eggwright.book.entry.TransferOf(set("14"), Diary.tray(1), null, basket),
                                new eggwright.book.entry.TransferOf(set("15"), Diary.tray(2), null, basket))));
        diary.note(day(25), pull(Scope.ofBasket(basket), Pull.LAST, 70));
        var account = only(diary.ledger());
        assertEquals(90, account.eggsSet());
        assertEquals(70, account.eggs(Fate.SALEABLE));
        assertEquals(20, account.eggs(Fate.UNACCOUNTED));
        var backwards = Ledger.of(diary.entries().reversed());
        assertEquals(diary.ledger().picture(), backwards.picture());
    }
}
