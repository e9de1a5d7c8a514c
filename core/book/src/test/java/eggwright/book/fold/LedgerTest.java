package eggwright.book.fold;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.Withdrawn;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.Fate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LedgerTest {
    @Test
    void mend_changesThePicture_andTheTrailStays() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        var look = diary.note(day(8), look("14", 7, FindingCount.removed(Finding.CLEAR, 15)));
        var mend = diary.note(
                day(9), new Replaced(look, look, null, look("14", 7, FindingCount.removed(Finding.CLEAR, 5))));
        var ledger = diary.ledger();
        assertEquals(5, ledger.picture().accounts().getFirst().eggs(Fate.CLEAR_UNOPENED));
        var trail = ledger.trail(look).orElseThrow();
        assertEquals(List.of(mend), trail.mends());
        assertEquals(mend, trail.shown());
    }

    @Test
    void newestFirst_givesPagesOfTheBook_alsoAfterOlderEntriesCame() {
        var diary = new Diary();
        for (int d : new int[] {4, 1, 9, 2, 7}) {
            diary.note(day(d), new eggwright.book.entry.Remarked(null, "day " + d));
        }
        var ledger = diary.ledger();
        assertEquals(List.of("day 9", "day 7"), said(ledger.newestFirst(0, 2)));
        diary.note(day(5), new eggwright.book.entry.Remarked(null, "day 5"));
        ledger.add(diary.entries().getLast());
        ledger.add(diary.entries().getLast());
        assertEquals(List.of("day 7", "day 5", "day 4"), said(ledger.newestFirst(1, 3)));
        assertEquals(List.of("day 1"), said(ledger.newestFirst(5, 60)));
        assertEquals(List.of(), said(ledger.newestFirst(60, 60)));
    }

    private static List<String> said(List<Kept> entries) {
        return entries.stream()
                .map(k -> k.entry().payload() instanceof eggwright.book.entry.Remarked it ? it.text() : "")
                .toList();
    }

    @Test
    void withdrawnEntry_countsNoMore() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        var look = diary.note(day(8), look("14", 7, FindingCount.removed(Finding.CLEAR, 15)));
        diary.note(day(9), new Withdrawn(look, look, "wrong tray"));
        assertEquals(0, diary.ledger().picture().accounts().getFirst().eggs(Fate.CLEAR_UNOPENED));
        assertEquals(
                MendTrail.Standing.WITHDRAWN,
                diary.ledger().trail(look).orElseThrow().standing());
    }

    @Test
    void twoMends_thatDidNotSeeEachOther_showTheGreatestId_andADiscrepancy() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        var look = diary.note(day(8), look("14", 7, FindingCount.removed(Finding.CLEAR, 15)));
        diary.note(day(9), new Replaced(look, look, null, look("14", 7, FindingCount.removed(Finding.CLEAR, 5))));
        var last = diary.note(
                day(10), new Replaced(look, look, null, look("14", 7, FindingCount.removed(Finding.CLEAR, 6))));
        var picture = diary.ledger().picture();
        assertEquals(6, picture.accounts().getFirst().eggs(Fate.CLEAR_UNOPENED));
        var doubt = picture.discrepancies().getFirst();
        assertEquals(DiscrepancyKind.TWO_MENDS, doubt.kind());
        assertEquals(last, doubt.entries().getFirst());
    }

    @Test
    void secondMend_thatSawTheFirst_isNoDiscrepancy() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        var look = diary.note(day(8), look("14", 7, FindingCount.removed(Finding.CLEAR, 15)));
        var first = diary.note(
                day(9), new Replaced(look, look, null, look("14", 7, FindingCount.removed(Finding.CLEAR, 5))));
        diary.note(day(10), new Replaced(look, first, null, look("14", 7, FindingCount.removed(Finding.CLEAR, 6))));
        var picture = diary.ledger().picture();
        assertEquals(6, picture.accounts().getFirst().eggs(Fate.CLEAR_UNOPENED));
        assertTrue(picture.discrepancies().isEmpty());
    }

    @Test
    void mend_waitsForItsEntry_andIsAppliedWhenThatArrives() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        var look = diary.note(day(8), look("14", 7, FindingCount.removed(Finding.CLEAR, 15)));
        diary.note(day(9), new Replaced(look, look, null, look("14", 7, FindingCount.removed(Finding.CLEAR, 5))));
        var entries = diary.entries();
        var ledger = Ledger.of(List.of(entries.get(0), entries.get(2)));
        assertEquals(
                DiscrepancyKind.MEND_WAITS,
                ledger.picture().discrepancies().getFirst().kind());
        ledger.add(entries.get(1));
        assertEquals(diary.ledger().picture(), ledger.picture());
        assertTrue(ledger.picture().discrepancies().isEmpty());
    }

    @Test
    void mends_inACircle_areVoidAndShown() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        var one = eggwright.book.name.EntryId.parse("01976b2e-7c00-7000-8000-000000000001");
        var two = eggwright.book.name.EntryId.parse("01976b2e-7c00-7000-8000-000000000002");
        var entries = new ArrayList<>(diary.entries());
        entries.add(withId(entries.getFirst(), one, new Withdrawn(two, two, "")));
        entries.add(withId(entries.getFirst(), two, new Withdrawn(one, one, "")));
        var picture = Ledger.of(entries).picture();
        assertEquals(
                DiscrepancyKind.MENDS_IN_A_CIRCLE,
                picture.discrepancies().getFirst().kind());
        assertEquals(54, picture.accounts().getFirst().eggs(Fate.IN_SETTER));
    }

    private static Kept withId(Kept like, eggwright.book.name.EntryId id, eggwright.book.entry.Payload payload) {
        var e = like.entry();
        return new Kept(
                new eggwright.book.entry.Entry(
                        id, e.farm(), e.happened(), e.noted(), e.who(), e.device(), e.origin(), payload, 1),
                like.received(),
                like.clockOffset());
    }

    @Test
    void asOf_isWhatHadBeenReceivedByThen() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(7, lot("4", 54))));
        diary.note(day(8), look("14", 7, FindingCount.removed(Finding.CLEAR, 5)), day(10));
        var ledger = diary.ledger();
        assertEquals(
                54,
                ledger.asOf(day(9).toInstant()).picture().accounts().getFirst().eggs(Fate.IN_SETTER));
        assertEquals(
                49,
                ledger.asOf(day(10).toInstant()).picture().accounts().getFirst().eggs(Fate.IN_SETTER));
    }
}
