package eggwright.invented.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.EggsSet;
import eggwright.book.fold.Ledger;
import eggwright.book.name.PenName;
import eggwright.book.picture.Fate;
import eggwright.invented.answer.Germ;
import eggwright.invented.answer.TrueFate;
import eggwright.invented.truth.LampTruth;
import eggwright.invented.truth.LampTruth.AtTransfer;
import eggwright.invented.truth.NotebookTruth;
import eggwright.invented.truth.PenEventTruth;
import eggwright.invented.truth.ScatterTruth;
import eggwright.invented.truth.TakeOffTruth;
import eggwright.invented.truth.TakeOffTruth.CountedBy;
import eggwright.invented.truth.TrendTruth;
import eggwright.invented.truth.Truth;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
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

    /** With a careful eye, nothing opened by halves and no slips, the book's account is what really happened. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void account_equalsTheTruth_whereAllIsCountedAndOpened(long seed) {
        var truth = Truth.PLAIN
                .with(new LampTruth(List.of(8, 14), AtTransfer.LOOKED_AT, 0, 0, 0, 0, 0, 0, 1, 100))
                .with(new TakeOffTruth(
                        List.of(CountedBy.LOAD, CountedBy.BASKET, CountedBy.SET).get((int) seed % 3), 2, 100, 0))
                .with(new NotebookTruth(0, 0, 5, 30, 4, 2, 1));
        var season = Season.of(truth, seed, MARCH);
        var picture = Ledger.of(season.entries()).picture();
        for (var set : season.answers().sets()) {
            var account = picture.set(set.set()).orElseThrow().account();
            assertEquals(set.eggsSet(), account.eggsSet(), set.set()::text);
            assertEquals(set.saleable(), account.eggs(Fate.SALEABLE), set.set()::text);
            assertEquals(set.eggs(TrueFate.CULLED), account.eggs(Fate.CULLED), set.set()::text);
            assertEquals(set.eggs(TrueFate.DEAD_IN_BASKET), account.eggs(Fate.DEAD_IN_BASKET), set.set()::text);
            assertEquals(set.eggs(TrueFate.CRACKED), account.eggs(Fate.CRACKED), set.set()::text);
            assertEquals(set.eggs(TrueFate.INFERTILE), account.eggs(Fate.INFERTILE), set.set()::text);
            assertEquals(0, account.eggs(Fate.UNACCOUNTED) + account.eggs(Fate.CLEAR_UNOPENED), set.set()::text);
        }
    }

    /** Chicks are counted right whatever else is missed. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void saleableChicks_areThoseThatHatched_whateverTheLampMissed(long seed) {
        var season = Season.of(Truth.PLAIN, seed, MARCH);
        var picture = Ledger.of(season.entries()).picture();
        season.answers()
                .saleable()
                .forEach((set, chicks) -> assertEquals(
                        chicks, picture.set(set).orElseThrow().account().eggs(Fate.SALEABLE), set::text));
    }

    @Test
    void eggRoom_isEmpty_whenTheSeasonIsOver() {
        var picture = Ledger.of(Season.of(Truth.PLAIN, 5, MARCH).entries()).picture();
        for (var shelf : picture.eggRoom().values()) {
            assertEquals(0, shelf.eggs(), () -> shelf.key().toString());
            assertEquals(
                    shelf.gatheredKept(),
                    shelf.set() + shelf.sold() + shelf.eaten() + shelf.discarded(),
                    () -> shelf.key().toString());
        }
    }

    /** A change at the lamp or in the notebook leaves the eggs their luck: same eggs set, same fertility. */
    @Test
    void eggsKeepTheirLuck_whenOnlyTheKeepersChange() {
        var careful = Season.of(Truth.PLAIN, 9, MARCH);
        var lamp = new LampTruth(List.of(7), AtTransfer.LOOKED_AT, 5, 5, 1, 1, 20, 30, 3, 0);
        var careless = Season.of(Truth.PLAIN.with(lamp).with(new NotebookTruth(9, 0, 50, 40, 50, 0, 5)), 9, MARCH);
        assertEquals(germs(careful), germs(careless));
    }

    /** A cock that fails lowers the fertility of its own pen, and of no other. */
    @Test
    void failingCock_strikesItsOwnPen_alone() {
        var plain = Season.of(Truth.PLAIN, 4, MARCH).answers();
        var failing = Season.of(
                        Truth.PLAIN.withEvents(
                                List.of(new PenEventTruth("Willow", PenEventTruth.What.COCK_FAILS, 20, -3, 7))),
                        4,
                        MARCH)
                .answers();
        for (var pen : Truth.PLAIN.pens()) {
            var before = plain.pen(new PenName(pen.name()));
            var after = failing.pen(new PenName(pen.name()));
            if (pen.name().equals("Willow")) {
                assertTrue(after.fertile() < 0.7 * before.fertile(), () -> before + " " + after);
            } else {
                assertEquals(before, after);
            }
        }
    }

    @Test
    void localHours_stayTheSame_acrossTheClockChange() {
        var season = Season.of(Truth.PLAIN, 2, LocalDate.of(2027, 2, 22));
        var hours = season.entries().stream()
                .map(k -> k.entry())
                .filter(e -> e.payload() instanceof EggsSet)
                .map(e -> e.happened())
                .toList();
        assertEquals(
                List.of(LocalTime.of(8, 0)),
                hours.stream().map(h -> h.toLocalTime()).distinct().toList());
        assertEquals(2, hours.stream().map(h -> h.getOffset()).distinct().count());
    }

    /** Levels come out near what the truth says: 4 standard errors of a season's eggs, set luck and drift set aside. */
    @Test
    void fertility_isThatOfTheTruth_whereNothingDrifts() {
        var still = Truth.PLAIN
                .withPens(List.of(Truth.PLAIN.pens().getFirst().withFertility(88, 0)))
                .with(new TrendTruth(0, 0, 0, 0, 0, 0))
                .with(new ScatterTruth(0, 0, ScatterTruth.Trays.BETA_BINOMIAL, 0, 0, 0, 0, 3));
        int eggs = 0;
        int fertile = 0;
        for (long seed = 1; seed <= 10; seed++) {
            var answers = Season.of(still, seed, MARCH).answers();
            eggs += (int) answers.eggs().count();
            fertile +=
                    (int) answers.eggs().filter(e -> e.germ() == Germ.FERTILE).count();
        }
        double error = Math.sqrt(0.88 * 0.12 / eggs);
        assertEquals(0.88, fertile / (double) eggs, 4 * error);
    }

    private static List<Germ> germs(InventedSeason season) {
        return season.answers().eggs().map(e -> e.germ()).toList();
    }
}
