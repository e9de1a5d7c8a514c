package eggwright.invented.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.fold.Ledger;
import eggwright.invented.truth.ShippedTruths;
import eggwright.invented.truth.Truth;
import eggwright.invented.truth.TruthReading;
import eggwright.invented.truth.TruthText;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Truths at the ends of their ranges still give seasons that add up. */
class OddTruthTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 8);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lamp / looks = none",
                "lamp / looks = 3, 5, 8, 11, 14, 17, 30\nlamp / at_transfer = looked at\nlamp / live_pulled_pct = 40",
                "pen Empty / hens = 0",
                "pen Hill / fertility_pct = 0",
                "pen Hill / fertility_pct = 100\nlosses pheasant / early_pct = 100\nlosses chukar / early_pct = 0",
                "losses = none\npen A / species = turkey\npen B / species = coturnix\npen C / species = mallard",
                "trays / eggs = 1\ntrays / fewest = 1\nseason / sets = 3",
                "trays / per_set = 1\negg room / keep_days = 1",
                "trays / pooled_below = 1000\ntrays / mixed_pct = 100\ntake off / counted_by = set",
                "take off / counted_by = basket\ntake off / pulls = 3\nseason / sets = 40",
                "machine One / does = setter and hatcher\nmachine One / tray_places = 5\nsection = none",
                "machine One / does = setter and hatcher\nsection = none",
                "power cut 1 / day = 0\npower cut 2 / day = 40\npower cut 2 / hours = 240\npower cut 2 / mid_pct_per_hour = 100",
                "burst / tray_pct = 100\nburst / neighbours = 200",
                "notebook / slip_pct = 100\nnotebook / unmended_slips = 0",
                "notebook / late_pct = 100\nnotebook / late_hours = 1000\nnotebook / round_missed_pct = 100",
                "lamp / unsorted_pct = 100\nlamp / doubtful_pct = 100",
                "orders / per_week = 50\norders / fewest = 1\norders / most = 1\norders / buyers = 1",
                "scatter / trays = heavy tailed\nscatter / tail_degrees = 1\nscatter / fertility_sd = 5\nscatter / loss_sd = 5",
                "scatter / fertility_rho = 0.9\nscatter / loss_rho = 0.9\nscatter / set_fertility_sd = 5",
                "farm / zone = Pacific/Apia\nfarm / keepers = Rowan\nseason / set_hour = 02:30"
            })
    void season_addsUp_forAnOddTruth(String text) {
        check(read(text), 0);
    }

    static Stream<String> shipped() {
        return ShippedTruths.names().stream();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void season_addsUp_forEveryShippedTruth(String name) {
        check(read(ShippedTruths.text(name).orElseThrow()), 1);
    }

    private static void check(Truth truth, long seed) {
        var season = Season.of(truth, seed, MARCH);
        var picture = Ledger.of(season.entries()).picture();
        assertEquals(
                season.answers().planted().stream().map(p -> p.entry()).toList(),
                picture.discrepancies().stream()
                        .map(d -> d.entries().getFirst())
                        .toList(),
                () -> List.copyOf(picture.discrepancies()).toString());
        for (var set : season.answers().sets()) {
            assertEquals(set.eggsSet(), picture.set(set.set()).orElseThrow().eggsSet(), set.set()::text);
        }
    }

    private static Truth read(String text) {
        return switch (TruthText.read(text)) {
            case TruthReading.Read it -> it.truth();
            case TruthReading.Refused it ->
                throw new AssertionError(it.reasons().toString());
        };
    }
}
