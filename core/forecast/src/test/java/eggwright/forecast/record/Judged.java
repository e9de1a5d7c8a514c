package eggwright.forecast.record;

import eggwright.book.fold.Ledger;
import eggwright.book.name.SetName;
import eggwright.forecast.record.Forecasted.Moment;
import eggwright.invented.season.Season;
import eggwright.invented.truth.Truth;
import eggwright.stats.predictive.WholeCounts;
import eggwright.trade.SpeciesProfile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Forecasts of an invented season, each with its place: where what came lay in it, ends randomised from a seed. */
record Judged(List<Judged.One> forecasts) {
    private static final LocalDate FIRST_EGG = LocalDate.of(2027, 3, 22);

    /**
     * @param number of the set within its season, from 1; sets of one day have one number
     * @param u the randomness of the ends
     */
    record One(Forecasted forecast, int number, double u) {
        double place() {
            return forecast.place(u);
        }

        /** The place in a forecast whose every count lies so many times as far from the middle. */
        double placeStretched(double times) {
            var chicks = forecast.forecast();
            int middle = chicks.quantile(0.5);
            var weights = new double[chicks.most() + 1];
            for (int k = 0; k <= chicks.most(); k++) {
                double to = Math.clamp(middle + times * (k - middle), 0, chicks.most());
                int below = (int) to;
                weights[below] += chicks.pmf(k) * (1 - (to - below));
                weights[Math.min(chicks.most(), below + 1)] += chicks.pmf(k) * (to - below);
            }
            return WholeCounts.ofWeights(weights).randomisedPit(forecast.came(), u);
        }
    }

    /** A whole season. */
    static Judged all(Truth truth, long seed) {
        return of(season(truth, seed), seed, any -> true);
    }

    /** One set of a season, picked by the seed. */
    static Judged one(Truth truth, long seed) {
        var ledger = season(truth, seed);
        var names = List.copyOf(ledger.picture().sets().keySet());
        var picked = names.get(new SplittableRandom(seed).nextInt(names.size()));
        return of(ledger, seed, picked::equals);
    }

    private static Ledger season(Truth truth, long seed) {
        return Ledger.of(Season.of(truth, seed, FIRST_EGG).entries());
    }

    private static Judged of(Ledger ledger, long seed, Predicate<SetName> wanted) {
        var record = TrackRecord.of(ledger, SpeciesProfile::of, wanted, () -> false);
        var days = new TreeSet<LocalDate>();
        ledger.picture().sets().values().forEach(set -> days.add(set.setOn()));
        var numbers = new HashMap<SetName, Integer>();
        ledger.picture()
                .sets()
                .forEach((name, set) ->
                        numbers.put(name, days.headSet(set.setOn()).size() + 1));
        var random = new SplittableRandom(seed + 1);
        return new Judged(record.forecasts().stream()
                .map(f -> new One(f, numbers.getOrDefault(f.set(), 0), random.nextDouble()))
                .toList());
    }

    /** How often ranges held, and two Monte Carlo errors with seasons as clusters; in percent. */
    record Held(double pct, double twoErrors, double plainPct, int forecasts) {
        boolean asOftenAs(double level) {
            return Math.abs(pct - 100 * level) <= twoErrors;
        }
    }

    static Held held(List<Judged> seasons, Predicate<One> which, double level) {
        return held(seasons, which, level, One::place);
    }

    static Held held(List<Judged> seasons, Predicate<One> which, double level, ToDoubleFunction<One> place) {
        double tail = (1 - level) / 2;
        double held = 0;
        double plain = 0;
        int count = 0;
        var perSeason = new ArrayList<double[]>();
        for (var season : seasons) {
            var mine = new double[2];
            for (var one : season.forecasts) {
                if (which.test(one)) {
                    double at = place.applyAsDouble(one);
                    mine[0] += at >= tail && at <= 1 - tail ? 1 : 0;
                    mine[1]++;
                    plain += one.forecast.held(level) ? 1 : 0;
                }
            }
            perSeason.add(mine);
            held += mine[0];
            count += (int) mine[1];
        }
        double share = held / count;
        double squares = 0;
        for (var mine : perSeason) {
            squares += Math.pow(mine[0] - share * mine[1], 2);
        }
        int clusters = perSeason.size();
        double error = Math.sqrt(squares * clusters / (clusters - 1.0)) / count;
        return new Held(100 * share, 200 * error, 100 * plain / count, count);
    }

    static Predicate<One> at(Moment moment) {
        return one -> one.forecast.moment() == moment;
    }
}
