package eggwright.forecast.record;

import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.book.entry.Origin;
import eggwright.book.fold.Ledger;
import eggwright.forecast.record.Forecasted.Moment;
import eggwright.invented.TruthDeck;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Forecasts on seasons of the invented farm, judged by what was known on the day. Run {@link #main} with a number of
 * seasons for the large table of docs/models/forecast-calibration.md.
 */
class InventedSeasonsTest {
    private static final LocalDate FIRST_EGG = LocalDate.of(2027, 3, 22);

    /** How often ranges with randomised ends held, and two Monte Carlo errors with seasons as clusters; in percent. */
    record Held(double pct, double twoErrors, int forecasts) {}

    static Held held(List<TrackRecord> seasons, Moment moment, double level) {
        double tail = (1 - level) / 2;
        double held = 0;
        double count = 0;
        var perSeason = new ArrayList<double[]>();
        for (int i = 0; i < seasons.size(); i++) {
            var random = new SplittableRandom(99 + i);
            var mine = new double[2];
            for (var forecast : seasons.get(i).of(moment, Origin.NOTED)) {
                double place = forecast.place(random.nextDouble());
                mine[0] += place >= tail && place <= 1 - tail ? 1 : 0;
                mine[1]++;
            }
            perSeason.add(mine);
            held += mine[0];
            count += mine[1];
        }
        double share = held / count;
        double squares = 0;
        for (var mine : perSeason) {
            squares += Math.pow(mine[0] - share * mine[1], 2);
        }
        double error = Math.sqrt(squares * seasons.size() / (seasons.size() - 1.0)) / count;
        return new Held(100 * share, 200 * error, (int) count);
    }

    static TrackRecord season(Truth truth, long seed) {
        return TrackRecord.of(Ledger.of(Season.of(truth, seed, FIRST_EGG).entries()), SpeciesProfile::of, () -> false);
    }

    /** One-sided, since ranges are wider than they need be while a farm is new: see the calibration page. */
    @Test
    void ranges_areNotTooNarrow_onInventedSeasons() {
        var deck = TruthDeck.varied(2026, 4);
        var seasons = new ArrayList<TrackRecord>();
        for (int i = 0; i < deck.size(); i++) {
            seasons.add(season(deck.get(i), 5000 + i));
        }
        for (var moment : Moment.values()) {
            for (double level : List.of(0.8, 0.95)) {
                var held = held(seasons, moment, level);
                assertTrue(held.forecasts() > 30, held.toString());
                assertTrue(
                        held.pct() >= 100 * level - Math.max(8, held.twoErrors()), moment + " " + level + " " + held);
            }
        }
    }

    /** {@code varied 200} or {@code outside 28}: the table, a line for each moment and level. */
    public static void main(String[] arguments) {
        int count = Integer.parseInt(arguments[1]);
        var deck = arguments[0].equals("outside") ? TruthDeck.outside(2026, count) : TruthDeck.varied(2026, count);
        var seasons = java.util.stream.IntStream.range(0, count)
                .parallel()
                .mapToObj(i -> season(deck.get(i), 5000 + i))
                .toList();
        for (var moment : Moment.values()) {
            for (double level : List.of(0.8, 0.95)) {
                System.out.println(moment.word() + " " + level + " " + held(seasons, moment, level));
            }
        }
    }
}
