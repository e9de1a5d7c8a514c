package eggwright.invented;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.book.name.EntryId;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class TruthDeckTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 8);

    @Test
    void deck_givesSeasonsThatAddUp_insideAndOutsideTheFamily() {
        var deck = new java.util.ArrayList<Truth>(TruthDeck.varied(5, 24));
        deck.addAll(TruthDeck.outside(6, 21));
        for (int i = 0; i < deck.size(); i++) {
            var season = Season.of(deck.get(i), i, MARCH);
            var picture = Ledger.of(season.entries()).picture();
            int number = i;
            assertEquals(List.of(), picture.discrepancies(), () -> "truth " + number);
            int set =
                    season.answers().sets().stream().mapToInt(s -> s.eggsSet()).sum();
            assertEquals(
                    set, picture.accounts().stream().mapToInt(a -> a.eggsSet()).sum(), () -> "truth " + number);
        }
    }

    @Test
    void deck_isTheSame_fromTheSameSeed() {
        assertEquals(TruthDeck.varied(5, 4), TruthDeck.varied(5, 4));
        assertEquals(TruthDeck.varied(5, 2), TruthDeck.varied(5, 4).subList(0, 2));
        assertNotEquals(TruthDeck.varied(5, 4), TruthDeck.varied(6, 4));
    }

    @Test
    void strangeWorld_changesTheOutcome_always() {
        for (var world : Strange.values()) {
            var plain = Season.of(Truth.PLAIN, 3, MARCH).answers();
            var strange = Season.of(world.of(Truth.PLAIN), 3, MARCH).answers();
            assertNotEquals(plain, strange, world::name);
        }
    }

    @Test
    void bigBook_holdsAsManyEntriesAsAsked_eachOnce() {
        var book = BigBook.of(20_000, 1);
        assertEquals(20_000, book.size());
        var ids = new HashSet<EntryId>();
        book.forEach(k -> ids.add(k.entry().id()));
        assertEquals(20_000, ids.size());
        var picture = Ledger.of(book).picture();
        assertTrue(picture.sets().size() > 100, () -> "sets " + picture.sets().size());
    }
}
