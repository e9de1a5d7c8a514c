package eggwright.rates.candler.blind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.*;
import eggwright.book.fold.Ledger;
import eggwright.book.name.*;
import eggwright.trade.Species;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Wren and Linnet candle tray 7 of set 14 on the same evening, without telling each other. */
class BlindLooksTest {
    private static final SetName SET = new SetName("14");
    private static final TrayName TRAY = new TrayName("7");
    private static final OffsetDateTime EVENING = OffsetDateTime.parse("2027-04-12T20:00-05:00");

    private final List<Kept> entries = new ArrayList<>();

    private Ledger book(Noted... notes) {
        var lots = List.of(Lot.of(null, Species.PHEASANT, null, null, 54));
        note(new Noted(-7 * 24 * 60, "Wren", new EggsSet(SET, List.of(new LoadSet(TRAY, null, null, null, lots)))));
        for (var noted : notes) {
            note(noted);
        }
        return Ledger.of(entries);
    }

    private record Noted(int minutesAfter, String who, Payload payload) {}

    private void note(Noted noted) {
        var at = EVENING.plusMinutes(noted.minutesAfter());
        entries.add(new Kept(
                new Entry(
                        EntryId.of(at.toInstant().toEpochMilli(), 0, entries.size() + 1),
                        new FarmId("Fallow End"),
                        at,
                        at,
                        new PersonName(noted.who()),
                        new DeviceName("phone"),
                        Origin.NOTED,
                        noted.payload(),
                        1),
                at.toInstant(),
                Duration.ZERO));
    }

    /** Clears at some places; so many of them were taken out. */
    private static Looked clears(@Nullable LookSort sort, int takenOut, int... places) {
        var seen = new ArrayList<PlaceSeen>();
        for (int place : places) {
            seen.add(new PlaceSeen(place, Finding.CLEAR));
        }
        var counts = List.of(new FindingCount(Finding.CLEAR, places.length, takenOut, 0));
        return new Looked(Scope.ofLoad(SET, TRAY), null, null, counts, 0, null, seen, sort);
    }

    @Test
    void blindLook_beforeTheUsualOne_isComparedEggByEgg() {
        var ledger = book(
                new Noted(0, "Linnet", clears(LookSort.SECOND_BLIND, 0, 3, 9)),
                new Noted(20, "Wren", clears(null, 2, 3, 11)));

        var pairs = BlindLooks.pairs(ledger.picture(), ledger.inOrder());

        assertEquals(1, pairs.size());
        var told =
                assertInstanceOf(BlindPair.Told.EggByEgg.class, pairs.getFirst().told());
        assertEquals(54, told.table().eggs());
        assertEquals(52, told.table().agreed());
        assertEquals(1, BlindLooks.ids(ledger.picture()).size());
    }

    @Test
    void blindLook_afterEggsWereTakenOut_sawOtherEggs() {
        var ledger = book(
                new Noted(0, "Wren", clears(null, 2, 3, 11)),
                new Noted(20, "Linnet", clears(LookSort.SECOND_BLIND, 0, 9)));

        var pair = BlindLooks.pairs(ledger.picture(), ledger.inOrder()).getFirst();

        assertEquals(new BlindPair.Told.Nothing(BlindPair.WhyNot.OTHER_EGGS), pair.told());
    }

    @Test
    void blindLook_withoutAnotherPersonsLook_hasNothingToBeHeldAgainst() {
        var ledger = book(
                new Noted(0, "Wren", clears(null, 0, 3)), new Noted(20, "Wren", clears(LookSort.SECOND_BLIND, 0, 3)));

        assertTrue(BlindLooks.pairs(ledger.picture(), ledger.inOrder()).isEmpty());
    }
}
