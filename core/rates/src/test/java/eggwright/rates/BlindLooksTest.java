package eggwright.rates;

import static eggwright.book.diary.Diary.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Finding;
import eggwright.book.entry.FindingCount;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Scope;
import eggwright.book.name.PersonName;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.LookTaken;
import eggwright.rates.candler.blind.BlindPair;
import eggwright.rates.candler.blind.BlindPair.Told;
import eggwright.rates.candler.blind.BlindPair.WhyNot;
import eggwright.rates.candler.blind.SeenAtLook;
import eggwright.rates.candler.blind.TwoPeople;
import eggwright.stats.agreement.Kappa;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two people, one tray of 54 eggs, one evening. */
class BlindLooksTest {
    private static final PersonName WREN = new PersonName("Wren");
    private static final PersonName ALDER = new PersonName("Alder");
    private static final LoadRef TRAY = new LoadRef(set("14"), tray(7));

    private static LookTaken taken(int tray, int day, int eggs, @Nullable Integer lookedAt, FindingCount... findings) {
        return new LookTaken(
                eggwright.book.name.EntryId.of(1, 0, tray),
                day(day),
                day,
                eggs,
                new Looked(Scope.ofLoad(set("14"), tray(tray)), lookedAt, null, List.of(findings), 0, null));
    }

    private static SeenAtLook seen(PersonName who, Map<Integer, Finding> places, FindingCount... findings) {
        return SeenAtLook.of(who, TRAY, taken(7, 8, 54, null, findings), places);
    }

    @Test
    void twoLooks_areCrossedEggByEgg_wherePlacesAreMarked() {
        var first = seen(
                WREN,
                Map.of(3, Finding.CLEAR, 9, Finding.CLEAR, 20, Finding.BLOOD_RING),
                FindingCount.left(Finding.CLEAR, 2),
                FindingCount.left(Finding.BLOOD_RING, 1));
        var second = seen(
                ALDER,
                Map.of(3, Finding.CLEAR, 20, Finding.CLEAR, 41, Finding.DOUBTFUL),
                FindingCount.left(Finding.CLEAR, 2),
                FindingCount.left(Finding.DOUBTFUL, 1),
                FindingCount.left(Finding.WRONG_END_UP, 4));
        var table = assertInstanceOf(Told.EggByEgg.class, new BlindPair(first, second).told())
                .table();
        assertEquals(54, table.eggs());
        // Both clear at place 3, both live at the 50 places that neither marked.
        assertEquals(51, table.agreed());
        assertEquals(1, table.on("clear").agreed());
        assertEquals(2, table.on("clear").differed());
        assertEquals(2, table.on("live").differed());
        assertEquals(1, table.on("blood_ring").differed());
    }

    @Test
    void twoLooks_areOnlyBounded_whereOnlyTotalsAreKnown() {
        var first = seen(WREN, Map.of(), FindingCount.left(Finding.CLEAR, 6));
        var second = seen(ALDER, Map.of(3, Finding.CLEAR), FindingCount.left(Finding.CLEAR, 4));
        var totals = assertInstanceOf(Told.TotalsOnly.class, new BlindPair(first, second).told())
                .totals();
        // All of the 4 may be among the 6, or none.
        assertEquals(52, totals.mostAgreed());
        assertEquals(44, totals.leastAgreed());
    }

    @Test
    void twoLooks_areKnownEggByEgg_whenBothSawOnlyLiveEggs() {
        assertInstanceOf(
                Told.EggByEgg.class,
                new BlindPair(seen(WREN, Map.of()), seen(ALDER, Map.of(), FindingCount.left(Finding.LIVE, 54))).told());
    }

    @Test
    void twoLooks_areNotCompared_whereTheyCannotBe() {
        var first = seen(WREN, Map.of(), FindingCount.left(Finding.CLEAR, 6));
        whyNot(WhyNot.SAME_PERSON, first, seen(WREN, Map.of()));
        whyNot(
                WhyNot.OTHER_TRAY,
                first,
                SeenAtLook.of(ALDER, new LoadRef(set("14"), tray(8)), taken(8, 8, 54, null), Map.of()));
        whyNot(WhyNot.OTHER_DAY, first, SeenAtLook.of(ALDER, TRAY, taken(7, 9, 54, null), Map.of()));
        whyNot(WhyNot.NOT_THIS_TRAY_ALONE, first, SeenAtLook.of(ALDER, TRAY, taken(7, 8, 54, 20), Map.of()));
        // The first look took its clears out, so the second could not see them.
        whyNot(WhyNot.OTHER_EGGS, first, SeenAtLook.of(ALDER, TRAY, taken(7, 8, 48, null), Map.of()));
        whyNot(WhyNot.MORE_SEEN_THAN_IN, first, seen(ALDER, Map.of(), FindingCount.left(Finding.ROT, 55)));
    }

    private static void whyNot(WhyNot why, SeenAtLook first, SeenAtLook second) {
        assertEquals(new Told.Nothing(why), new BlindPair(first, second).told());
    }

    @Test
    void trays_areAddedUpByPeople_whoeverLookedFirst() {
        var wren = seen(WREN, Map.of(3, Finding.CLEAR, 9, Finding.CLEAR), FindingCount.left(Finding.CLEAR, 2));
        var alder = seen(ALDER, Map.of(3, Finding.CLEAR), FindingCount.left(Finding.CLEAR, 1));
        var unplaced = seen(ALDER, Map.of(), FindingCount.left(Finding.CLEAR, 5));
        var people = TwoPeople.of(List.of(
                new BlindPair(wren, alder),
                new BlindPair(alder, wren),
                new BlindPair(wren, unplaced),
                new BlindPair(wren, seen(WREN, Map.of()))));
        assertEquals(1, people.size());
        var both = people.getFirst();
        assertEquals(ALDER, both.one());
        assertEquals(2, both.eggByEgg().size());
        var table = both.table().orElseThrow();
        assertEquals(108, table.eggs());
        // Alder's word is the row both times: twice live by Alder and clear by Wren, never the other way.
        assertEquals(2, table.count(3, 0));
        assertEquals(0, table.count(0, 3));
        assertEquals(54, both.eggsByTotals());
        assertEquals(47, both.leastAgreed());
        assertEquals(51, both.mostAgreed());
        var kappa = assertInstanceOf(Kappa.Estimated.class, Kappa.of(table, 0.95));
        assertTrue(kappa.kappa() > 0.6 && kappa.kappa() < 0.7, kappa.toString());
    }
}
