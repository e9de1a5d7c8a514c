package eggwright.invented.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.fold.Ledger;
import eggwright.invented.truth.Truth;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeasonTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 8);

    @Test
    void season_isTheSame_fromTheSameSeed() {
        assertEquals(Season.of(Truth.PLAIN, 7, MARCH), Season.of(Truth.PLAIN, 7, MARCH));
        assertNotEquals(
                Season.of(Truth.PLAIN, 7, MARCH).answers(),
                Season.of(Truth.PLAIN, 8, MARCH).answers());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void fold_showsOnlyWhatWasPlanted_inAPlainSeason(long seed) {
        var season = Season.of(Truth.PLAIN, seed, MARCH);
        var picture = Ledger.of(season.entries()).picture();
        assertEquals(
                season.answers().planted(),
                picture.discrepancies().stream()
                        .map(d -> new eggwright.invented.answer.Planted(
                                d.entries().getFirst(), d.kind()))
                        .toList(),
                () -> "seed " + seed + ": " + picture.discrepancies());
        assertEquals(14, picture.sets().size());
        assertTrue(
                season.entries().size() > 1000,
                () -> "entries " + season.entries().size());
    }
}
