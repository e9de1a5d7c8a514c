package eggwright.book.fold;

import static eggwright.book.fold.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Kept;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Replaced;
import eggwright.book.entry.Scope;
import eggwright.book.entry.Withdrawn;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.Fate;
import eggwright.trade.BreakOutClass;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** Any order of arrival, one by one, in batches or at once: the same picture. */
    @ParameterizedTest
    @MethodSource("seeds")
    void fold_givesTheSamePicture_inAnyOrder(long seed) {
        var entries = new ArrayList<>(season(seed).entries());
        var all = Ledger.of(entries).picture();
        Collections.shuffle(entries, new Random(seed));
        var oneByOne = new Ledger();
        for (var entry : entries) {
            oneByOne.add(entry);
            oneByOne.add(entry);
        }
        assertEquals(all, oneByOne.picture(), "seed " + seed);
        for (var account : all.accounts()) {
            assertEquals(
                    account.eggsSet(),
                    account.fates().stream().mapToInt(f -> f.eggs()).sum(),
                    "seed " + seed);
            assertEquals(
                    account.eggsSet(),
                    account.atTheLamp().stream().mapToInt(f -> f.eggs()).sum(),
                    "seed " + seed);
            assertTrue(account.fates().stream().allMatch(f -> f.eggs() > 0), "seed " + seed);
        }
    }

    /** A season with slips of every sort: wrong trays, too many eggs, mends of mends, pooling across sets. */
    private static Diary season(long seed) {
        var random = new Random(seed);
        var diary = new Diary();
        var ids = new ArrayList<eggwright.book.name.EntryId>();
        for (int week = 0; week < 6; week++) {
            var set = Integer.toString(week);
            diary.note(
                    MONDAY.plusWeeks(week),
                    setting(
                            set,
                            load(1, lot("A", 20 + random.nextInt(30))),
                            load(2, lot("B", 10 + random.nextInt(30)), lot("A", 5)),
                            load(3, lot("C", 40))));
            for (int n = 0; n < 12; n++) {
                var at = MONDAY.plusWeeks(week).plusDays(random.nextInt(28) - 1);
                int tray = 1 + random.nextInt(4);
                var load = Scope.ofLoad(set(set), Diary.tray(tray));
                var scope = random.nextBoolean() ? load : Scope.ofSet(set(set));
                ids.add(diary.note(
                        at,
                        switch (random.nextInt(8)) {
                            case 0, 1 ->
                                look(
                                        set,
                                        tray,
                                        FindingCount.removed(Finding.CLEAR, random.nextInt(6)),
                                        FindingCount.removed(Finding.DEAD, random.nextInt(4)));
                            case 2 ->
                                pool(set, 1 + random.nextInt(2), 3, random.nextBoolean() ? null : random.nextInt(30));
                            case 3 -> transfer(set, tray);
                            case 4 ->
                                pull(scope, random.nextBoolean() ? Pull.LAST : Pull.MORE_TO_COME, random.nextInt(40));
                            case 5 ->
                                open(
                                        scope,
                                        8,
                                        random.nextBoolean() ? null : 3,
                                        as(BreakOutClass.INFERTILE, 3),
                                        as(BreakOutClass.LATE_DEAD, 4));
                            case 6 ->
                                new eggwright.book.entry.EggsMoved(
                                        set(set),
                                        Diary.tray(tray),
                                        null,
                                        5,
                                        set(Integer.toString(Math.max(0, week - 1))),
                                        Diary.tray(5),
                                        null,
                                        null);
                            default ->
                                new eggwright.book.entry.EggsGathered(
                                        pen("A"),
                                        eggwright.trade.Species.PHEASANT,
                                        at.toLocalDate(),
                                        at.toLocalDate(),
                                        random.nextInt(40),
                                        List.of());
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
}
