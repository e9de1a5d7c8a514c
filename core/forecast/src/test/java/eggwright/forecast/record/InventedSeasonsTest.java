package eggwright.forecast.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.forecast.record.Forecasted.Moment;
import eggwright.invented.TruthDeck;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Forecasts on seasons of the invented farm, judged by what was known on the day. A small run that can fail on both sides:
 * one set of each season, so that forecasts of one moment are independent and the bounds are two plain Monte Carlo errors.
 * The large run is {@link CalibrationRunTest}.
 */
class InventedSeasonsTest {
    private static final int SEASONS = 48;
    private static final long SEED = 2026;

    private static List<Judged> seasons = List.of();

    @BeforeAll
    static void judge() {
        var deck = TruthDeck.varied(SEED, SEASONS);
        var judged = new ArrayList<Judged>();
        for (int i = 0; i < SEASONS; i++) {
            judged.add(Judged.one(deck.get(i), SEED + i));
        }
        seasons = List.copyOf(judged);
    }

    private static double twoErrors(double level) {
        return 200 * Math.sqrt(level * (1 - level) / SEASONS);
    }

    @Test
    void ranges_holdAsOftenAsTheySay_onInventedSeasons() {
        for (var moment : Moment.values()) {
            for (double level : List.of(0.8, 0.95)) {
                var held = Judged.held(seasons, Judged.at(moment), level);
                assertEquals(SEASONS, held.forecasts());
                assertEquals(100 * level, held.pct(), twoErrors(level), moment + " at " + level);
            }
        }
    }

    /** The same check on the same seasons must not pass ranges that are too narrow or too wide. */
    @Test
    void stretchedRanges_areFound_tooNarrowAndTooWide() {
        for (var moment : Moment.values()) {
            var narrow = Judged.held(seasons, Judged.at(moment), 0.8, one -> one.placeStretched(0.5));
            assertTrue(narrow.pct() < 80 - twoErrors(0.8), moment + " half as wide: " + narrow);
            var wide = Judged.held(seasons, Judged.at(moment), 0.8, one -> one.placeStretched(2));
            assertTrue(wide.pct() > 80 + twoErrors(0.8), moment + " twice as wide: " + wide);
        }
    }

    /** Not stretched is not changed: the planted breach is in the stretching alone. */
    @Test
    void stretchingByOne_changesNothing() {
        for (var season : seasons) {
            for (var one : season.forecasts()) {
                assertEquals(one.place(), one.placeStretched(1), 1e-9);
            }
        }
    }
}
