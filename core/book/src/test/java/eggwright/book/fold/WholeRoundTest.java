package eggwright.book.fold;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.diary.Diary;
import eggwright.book.entry.*;
import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import eggwright.book.picture.Discrepancy;
import eggwright.book.picture.Discrepancy.About;
import eggwright.book.picture.Discrepancy.What;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.Fate;
import eggwright.book.picture.FateCount;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.Picture;
import eggwright.book.picture.ShelfKey;
import eggwright.book.picture.Stored;
import eggwright.trade.BreakOutClass;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a keeper may do on the round, and what they may get wrong: each kept, and shown where it does not add up. */
class WholeRoundTest {
    private static List<DiscrepancyKind> doubts(Diary diary) {
        return diary.picture().discrepancies().stream().map(Discrepancy::kind).toList();
    }

    private static int eggs(Picture picture, Fate fate) {
        return picture.accounts().stream().mapToInt(a -> a.eggs(fate)).sum();
    }

    private static void addsUp(Diary diary) {
        var picture = diary.picture();
        for (var account : picture.accounts()) {
            assertEquals(
                    account.eggsSet(),
                    account.fates().stream().mapToInt(FateCount::eggs).sum());
        }
        var shuffled = new java.util.ArrayList<>(diary.entries());
        Collections.shuffle(shuffled, new Random(14));
        assertEquals(picture, Ledger.of(shuffled).picture(), "whatever the order of arrival");
    }

    @Test
    void trays_areToppedUpAndPooled_andWalkFromSectionToSection() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 50)), load(2, lot("9", 30)), load(3, lot("9", 12))));
        diary.note(day(8), look("14", 2, FindingCount.removed(Finding.CLEAR, 6)));
        diary.note(day(8).plusMinutes(5), pool("14", 1, 2, 6));
        diary.note(day(8).plusMinutes(9), pool("14", 3, 2, null));
        diary.note(
                day(9),
                new LoadPlaced(
                        set("14"), Diary.tray(2), new MachineName("Setter 1"), new SectionName("5"), "left, third"));
        assertEquals(44, diary.load("14", 1).eggsNow());
        assertEquals(42, diary.load("14", 2).eggsNow());
        assertEquals(0, diary.load("14", 3).eggsNow());
        assertEquals(LoadPhase.OUT, diary.load("14", 3).phase());
        assertEquals(
                List.of(new SectionName("2"), new SectionName("5")),
                diary.load("14", 2).places().stream().map(p -> p.section()).toList());
        // One clear among the 42: of which pen nobody can tell any more.
        diary.note(day(14), look("14", 2, FindingCount.removed(Finding.DEAD, 1)));
        var dead = diary.picture().accounts().getFirst().fates().stream()
                .filter(f -> f.fate() == Fate.DEAD)
                .findFirst()
                .orElseThrow();
        assertEquals(3, dead.of().ids().size());
        assertEquals(List.of(), doubts(diary));
        addsUp(diary);
    }

    @Test
    void moreEggsMoved_thanTheTrayHeld_areShown() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 20)), load(2, lot("9", 30))));
        diary.note(day(8), pool("14", 1, 2, 25));
        var doubt = diary.picture().discrepancies().getFirst();
        assertEquals(DiscrepancyKind.MORE_OUT_THAN_IN, doubt.kind());
        assertEquals(new About.Eggs(tray("14", 1)), doubt.about());
        assertEquals(What.Gone.MOVED, doubt.what());
        assertEquals(25, doubt.counted());
        assertEquals(20, doubt.held());
        assertEquals(
                50,
                diary.picture()
                        .set(set("14"))
                        .orElseThrow()
                        .load(Diary.tray(2))
                        .orElseThrow()
                        .eggsNow());
        addsUp(diary);
    }

    @Test
    void eggsMoved_toASetThatNeverWentIn_areShown_andNotLost() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 20))));
        diary.note(day(8), new EggsMoved(set("14"), Diary.tray(1), null, 5, set("51"), Diary.tray(2), null, null));
        assertEquals(List.of(DiscrepancyKind.UNKNOWN_LOAD), doubts(diary));
        assertEquals(20, eggs(diary.picture(), Fate.IN_SETTER));
        addsUp(diary);
    }

    @Test
    void manyTrays_goIntoManyBaskets_andEachBasketIsCounted() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40)), load(2, lot("9", 40))));
        diary.note(
                day(21),
                transfer(
                        into("A", "14", 1, 25),
                        into("B", "14", 1, 15),
                        into("B", "14", 2, 30),
                        into("C", "14", 2, 10)));
        diary.note(day(24), pull(basket("A"), Pull.LAST, 20));
        diary.note(day(24), pull(basket("B"), Pull.LAST, 40));
        diary.note(day(24), pull(basket("C"), Pull.LAST, 10));
        diary.note(day(25), open(basket("A"), 5, 0, as(BreakOutClass.LATE_DEAD, 5)));
        var picture = diary.picture();
        assertEquals(70, eggs(picture, Fate.SALEABLE));
        assertEquals(5, eggs(picture, Fate.LATE_DEAD));
        assertEquals(5, eggs(picture, Fate.UNACCOUNTED));
        assertEquals(List.of(), doubts(diary));
        addsUp(diary);
    }

    @Test
    void basketsOfOneTray_nobodyCountedInto_areOnlyKnownTogether() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(day(21), transfer(into("A", "14", 1, null), into("B", "14", 1, null)));
        diary.note(day(24), pull(basket("A"), Pull.MORE_TO_COME, 18));
        diary.note(day(24), pull(basket("B"), Pull.MORE_TO_COME, 19));
        assertEquals(37, eggs(diary.picture(), Fate.SALEABLE));
        assertEquals(List.of(), doubts(diary));
        addsUp(diary);
    }

    @Test
    void basket_usedAgainNextWeek_speaksOfItsLastFilling() {
        var diary = new Diary();
        for (int week = 0; week < 4; week++) {
            var set = Integer.toString(14 + week);
            var monday = MONDAY.plusWeeks(week);
            diary.note(monday, setting(set, load(1, lot("4", 40))));
            diary.note(monday.plusDays(21), transfer(into("A", set, 1, null)));
            diary.note(monday.plusDays(25), pull(basket("A"), Pull.LAST, 30 + week));
            diary.note(monday.plusDays(25).plusHours(2), open(basket("A"), 5, 0, as(BreakOutClass.LATE_DEAD, 5)));
        }
        var picture = diary.picture();
        assertEquals(4, picture.accounts().size(), "the sets stay apart");
        for (int week = 0; week < 4; week++) {
            var account = picture.accounts().get(week);
            assertEquals(30 + week, account.eggs(Fate.SALEABLE));
            assertEquals(5, account.eggs(Fate.LATE_DEAD));
            assertEquals(5 - week, account.eggs(Fate.UNACCOUNTED));
        }
        assertEquals(List.of(), doubts(diary));
        addsUp(diary);
    }

    @Test
    void basket_intoWhichNothingWent_isShown_untilTheTransferArrives() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        var pull = diary.note(day(24), pull(basket("Z"), Pull.LAST, 30));
        var doubt = diary.picture().discrepancies().getFirst();
        assertEquals(DiscrepancyKind.UNKNOWN_LOAD, doubt.kind());
        assertEquals(List.of(pull), doubt.entries());
        assertEquals(new About.Eggs(basket("Z")), doubt.about());
        diary.note(day(21), transfer(into("Z", "14", 1, null)), day(26));
        assertEquals(List.of(), doubts(diary));
        assertEquals(30, eggs(diary.picture(), Fate.SALEABLE));
        addsUp(diary);
    }

    @Test
    void fewerEggsTransferred_thanTheTrayHolds_areShown_andStayIn() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(day(21), transfer(into("A", "14", 1, 20), into("B", "14", 1, 15)));
        assertEquals(List.of(DiscrepancyKind.LEFT_AT_TRANSFER), doubts(diary));
        assertEquals(5, eggs(diary.picture(), Fate.IN_SETTER));
        assertEquals(35, eggs(diary.picture(), Fate.IN_HATCHER));
        addsUp(diary);
    }

    @Test
    void moreEggsTransferred_thanTheTrayHolds_areShown() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(day(21), transfer(into("A", "14", 1, 25), into("B", "14", 1, 20)));
        var doubt = diary.picture().discrepancies().getFirst();
        assertEquals(DiscrepancyKind.MORE_OUT_THAN_IN, doubt.kind());
        assertEquals(45, doubt.counted());
        assertEquals(40, doubt.held());
        assertEquals(40, eggs(diary.picture(), Fate.IN_HATCHER));
        addsUp(diary);
    }

    @Test
    void twoCounts_ofOneTray_thatDiffer_areShown() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(day(8), new Looked(tray("14", 1), null, 39, List.of(), 0, null));
        assertEquals(List.of(DiscrepancyKind.COUNT_DIFFERS), doubts(diary));
        assertEquals(40, eggs(diary.picture(), Fate.IN_SETTER));
        addsUp(diary);
    }

    @Test
    void lookAtPartOfATray_takesOutWhatItFound_andSaysNothingOfTheRest() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(
                day(8),
                new Looked(
                        tray("14", 1),
                        12,
                        null,
                        List.of(FindingCount.removed(Finding.CLEAR, 2), FindingCount.left(Finding.LIVE, 10)),
                        0,
                        null));
        var load =
                diary.picture().set(set("14")).orElseThrow().load(Diary.tray(1)).orElseThrow();
        assertTrue(!load.wasLookedAt());
        assertEquals(12, load.looks().getFirst().lookedAt());
        assertEquals(38, load.eggsNow());
        diary.note(day(9), new Looked(tray("14", 1), 5, null, List.of(FindingCount.left(Finding.LIVE, 6)), 0, null));
        assertEquals(List.of(DiscrepancyKind.MORE_SEEN_THAN_IN), doubts(diary));
        addsUp(diary);
    }

    private static Stored stored(@Nullable LocalDate laid, int eggs) {
        return new Stored(laid, laid, eggs);
    }

    @Test
    void eggRoom_keepsItsAccount_throughWhateverHappensThere() {
        var diary = new Diary();
        var day = LocalDate.of(2027, 3, 29);
        var pen = pen("4");
        var key = new ShelfKey(pen, Species.PHEASANT);
        for (int n = 0; n < 4; n++) {
            diary.note(
                    MONDAY.minusDays(7 - n),
                    new EggsGathered(
                            pen,
                            Species.PHEASANT,
                            day.plusDays(n),
                            day.plusDays(n),
                            20,
                            List.of(new Rejected(RejectReason.CRACKED, 1))));
        }
        diary.note(MONDAY.minusDays(3), new EggsSold(pen, Species.PHEASANT, null, null, null, 12));
        diary.note(MONDAY.minusDays(3).plusHours(1), new EggsEaten(pen, Species.PHEASANT, null, null, 3));
        diary.note(
                MONDAY.minusDays(2),
                new EggsDiscarded(pen, Species.PHEASANT, day.plusDays(3), day.plusDays(3), 2, "cracked"));
        diary.note(MONDAY.minusDays(1), new EggsCounted(pen, Species.PHEASANT, 62));
        diary.note(MONDAY, setting("14", load(1, lot("4", 50))));
        var shelf = Objects.requireNonNull(diary.picture().eggRoom().get(key));
        // 80 gathered, 12 sold, 3 eaten, 2 discarded: 63 by the book, 62 by hand; 50 set, the oldest first.
        assertEquals(12, shelf.eggs());
        assertEquals(List.of(stored(day.plusDays(3), 12)), shelf.stored());
        assertEquals(
                List.of(80, 4, 50, 12, 3, 2),
                List.of(
                        shelf.gatheredKept(),
                        shelf.gatheredRejected(),
                        shelf.set(),
                        shelf.sold(),
                        shelf.eaten(),
                        shelf.discarded()));
        var doubt = diary.picture().discrepancies().getFirst();
        assertEquals(
                new Discrepancy(
                        DiscrepancyKind.EGG_ROOM_COUNT_DIFFERS,
                        doubt.entries(),
                        new About.Shelf(key),
                        62,
                        63,
                        What.Untold.UNTOLD),
                doubt);
        diary.note(MONDAY.plusHours(1), new EggsSold(pen, Species.PHEASANT, null, null, null, 15));
        var shortage = diary.picture().discrepancies().getLast();
        assertEquals(DiscrepancyKind.EGG_ROOM_SHORT, shortage.kind());
        assertEquals(What.Gone.SOLD, shortage.what());
        assertEquals(12, shortage.held());
        addsUp(diary);
    }

    @Test
    void aCustomersEggs_areSetForThem_andFollowedApart() {
        var diary = new Diary();
        var theirs = pen("Marlow's");
        diary.note(
                MONDAY.minusDays(1),
                new EggsReceived(theirs, Species.PHEASANT, null, null, 30, ReceivedFor.CUSTOMER, "Marlow"));
        diary.note(
                MONDAY,
                setting("14", load(1, lot("4", 40)), load(2, Lot.of(theirs, Species.PHEASANT, null, null, 30))));
        diary.note(day(24), pull(tray("14", 2), Pull.LAST, 24));
        var picture = diary.picture();
        assertEquals(
                0,
                Objects.requireNonNull(picture.eggRoom().get(new ShelfKey(theirs, Species.PHEASANT)))
                        .eggs());
        assertEquals(24, eggs(picture, Fate.SALEABLE));
        assertEquals(6, eggs(picture, Fate.UNACCOUNTED));
        assertEquals(40, eggs(picture, Fate.IN_SETTER));
        assertEquals(List.of(), doubts(diary));
        addsUp(diary);
    }

    @Test
    void chicks_placedDiedAndSold_areCountedByKind() {
        var diary = new Diary();
        diary.note(day(25), new ChicksPlaced(set("14"), Species.PHEASANT, 70, "Brooder 1"));
        diary.note(day(27), new ChicksDied(set("14"), Species.PHEASANT, 2, "Brooder 1", "chilled"));
        diary.note(day(40), new ChicksSold(null, Species.PHEASANT, 50, null));
        var chicks = diary.picture().farm().chicks().get(Species.PHEASANT);
        assertEquals(new eggwright.book.picture.FarmPicture.Chicks(70, 2, 50, 0), chicks);
    }

    @Test
    void moreChicksDiedOrSold_thanWerePlaced_areKept_andShown() {
        var diary = new Diary();
        diary.note(day(25), new ChicksPlaced(null, Species.PHEASANT, 70, "Brooder 1"));
        diary.note(day(27), new ChicksDied(null, Species.PHEASANT, 12, "Brooder 1", "chilled"));
        assertEquals(List.of(), diary.picture().discrepancies());
        diary.note(day(40), new ChicksSold(null, Species.PHEASANT, 60, null));
        diary.note(day(41), new ChicksDied(null, Species.PHEASANT, 1, "Brooder 1", ""));
        var doubts = diary.picture().discrepancies();
        assertEquals(
                List.of("60 of 58 CHICKS_SOLD", "1 of 0 CHICKS_DIED"),
                doubts.stream()
                        .map(d -> d.counted() + " of " + d.held() + " " + d.what())
                        .toList());
        assertEquals(DiscrepancyKind.CHICKS_SHORT, doubts.getFirst().kind());
        assertEquals(new About.Chicks(Species.PHEASANT), doubts.getFirst().about());
        assertEquals(
                new eggwright.book.picture.FarmPicture.Chicks(70, 13, 60, 0),
                diary.picture().farm().chicks().get(Species.PHEASANT));
    }

    @Test
    void chicksSoldStraightFromTheHatcher_areNoContradiction_butDeathsInNoBrooderAre() {
        var diary = new Diary();
        diary.note(day(25), new ChicksSold(null, Species.CHUKAR, 40, null));
        assertEquals(List.of(), diary.picture().discrepancies());
        diary.note(day(26), new ChicksDied(null, Species.CHUKAR, 2, "Brooder 2", ""));
        assertEquals(
                DiscrepancyKind.CHICKS_SHORT,
                diary.picture().discrepancies().getFirst().kind());
    }

    @Test
    void moreBirdsGone_thanThePenHad_areShown() {
        var diary = new Diary();
        diary.note(MONDAY.minusDays(30), new PenOpened(pen("4"), Species.PHEASANT, 2, 12, ""));
        diary.note(MONDAY, new PenChanged(pen("4"), PenChange.DIED, 0, 13, "fox"));
        var doubt = diary.picture().discrepancies().getFirst();
        assertEquals(DiscrepancyKind.PEN_SHORT, doubt.kind());
        assertEquals(What.OfBirds.HENS, doubt.what());
        assertEquals(new About.Birds(pen("4")), doubt.about());
        assertEquals(0, diary.picture().pen(pen("4")).orElseThrow().hens());
    }

    @Test
    void sameTray_filledTwiceInOneSet_countsBoth_andIsShown() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(MONDAY.plusHours(1), setting("14", load(1, lot("9", 10))));
        assertEquals(List.of(DiscrepancyKind.TRAY_TWICE), doubts(diary));
        assertEquals(50, eggs(diary.picture(), Fate.IN_SETTER));
        addsUp(diary);
    }

    @Test
    void aLook_afterTheLastPull_findsNothingLeft() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(day(24), pull(tray("14", 1), Pull.LAST, 36));
        diary.note(day(25), look("14", 1, FindingCount.removed(Finding.DEAD, 2)));
        assertEquals(List.of(DiscrepancyKind.MORE_SEEN_THAN_IN, DiscrepancyKind.MORE_OUT_THAN_IN), doubts(diary));
        assertEquals(4, eggs(diary.picture(), Fate.UNACCOUNTED));
        addsUp(diary);
    }

    @Test
    void moreChicks_thanEggs_areShown_andTheAccountStaysTrue() {
        var diary = new Diary();
        diary.note(MONDAY, setting("14", load(1, lot("4", 40))));
        diary.note(day(24), pull(tray("14", 1), Pull.MORE_TO_COME, 30));
        diary.note(day(25), pull(tray("14", 1), Pull.LAST, 15));
        var doubt = diary.picture().discrepancies().getFirst();
        assertEquals(DiscrepancyKind.MORE_OUT_THAN_IN, doubt.kind());
        assertEquals(new What.OfFate(Fate.SALEABLE), doubt.what());
        assertEquals(5, doubt.counted());
        assertEquals(40, eggs(diary.picture(), Fate.SALEABLE));
        addsUp(diary);
    }
}
