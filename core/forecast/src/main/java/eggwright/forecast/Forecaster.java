package eggwright.forecast;

import eggwright.book.picture.Picture;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.Passages;
import eggwright.forecast.history.StageKind;
import eggwright.stats.predictive.WholeCounts;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Forecasts saleable chicks by a chain of stages. Each stage starts from the trade's published losses at a small weight
 * and learns from this farm's own trays; see {@code docs/models/forecast.md}. Draws {@value #DRAWS} futures from a fixed
 * seed, so that the same book gives the same answer; the Monte Carlo error of a quantile is about 1 % of the spread.
 */
public final class Forecaster {
    static final int DRAWS = 4000;
    private static final long SEED = 0x45676777L;

    private Forecaster() {}

    /**
     * @param picture what is known
     * @param profiles the species' figures, with the farm's own taken in
     */
    public static Forecast of(Picture picture, Function<Species, SpeciesProfile> profiles) {
        return of(Passages.of(picture), profiles);
    }

    public static Forecast of(List<Passage> passages, Function<Species, SpeciesProfile> profiles) {
        var sets = new ArrayList<SetForecast>();
        var weekDraws = new TreeMap<LocalDate, Map<Species, int[]>>();
        var weekSets = new TreeMap<LocalDate, Map<Species, List<eggwright.book.name.SetName>>>();
        var total = new int[DRAWS];
        int most = 0;
        var bySpecies = new TreeMap<Species, List<Passage>>();
        for (var passage : passages) {
            bySpecies.computeIfAbsent(passage.species(), s -> new ArrayList<>()).add(passage);
        }
        for (var species : bySpecies.entrySet()) {
            var profile = profiles.apply(species.getKey());
            var chain = Chain.of(species.getValue(), FirstCurve.of(profile));
            var draws = chain.draw(
                    DRAWS, new SplittableRandom(SEED + species.getKey().word().hashCode()));
            for (var running : draws.entrySet()) {
                var passage = running.getKey();
                var forecast = set(passage, profile, running.getValue());
                sets.add(forecast);
                most += forecast.chicks().most();
                var monday = forecast.hatchOn().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
                var week = weekDraws
                        .computeIfAbsent(monday, m -> new TreeMap<>())
                        .computeIfAbsent(species.getKey(), s -> new int[DRAWS]);
                weekSets.computeIfAbsent(monday, m -> new TreeMap<>())
                        .computeIfAbsent(species.getKey(), s -> new ArrayList<>())
                        .add(passage.set());
                for (int i = 0; i < DRAWS; i++) {
                    week[i] += running.getValue()[i];
                    total[i] += running.getValue()[i];
                }
            }
        }
        sets.sort(java.util.Comparator.comparing(SetForecast::setOn).thenComparing(SetForecast::set));
        return new Forecast(
                sets, weeks(weekDraws, weekSets), sets.isEmpty() ? WholeCounts.certain(0) : counts(total, most));
    }

    private static SetForecast set(Passage passage, SpeciesProfile profile, int[] draws) {
        var window = profile.hatchWindowDays().value();
        int hatchDay = (int) Math.round((window.low() + window.high()) / 2);
        int in = passage.waiting().stream().mapToInt(Passage.Waiting::eggs).sum();
        var known = passage.chicksSoFar() > 0
                ? SetForecast.Known.PULLED
                : passage.stage(StageKind.SET_TO_FIRST_LOOK).isEmpty()
                        ? SetForecast.Known.NOT_LOOKED_AT
                        : SetForecast.Known.LOOKED_AT;
        return new SetForecast(
                passage.set(),
                passage.species(),
                passage.setOn(),
                passage.setOn().plusDays(hatchDay),
                passage.eggsSet(),
                in,
                known,
                counts(draws, in + passage.chicksSoFar()));
    }

    private static List<WeekForecast> weeks(
            Map<LocalDate, Map<Species, int[]>> draws,
            Map<LocalDate, Map<Species, List<eggwright.book.name.SetName>>> sets) {
        var weeks = new ArrayList<WeekForecast>();
        draws.forEach((monday, bySpecies) -> bySpecies.forEach((species, counts) -> {
            var names = sets.getOrDefault(monday, new TreeMap<>()).getOrDefault(species, List.of());
            weeks.add(new WeekForecast(
                    monday,
                    species,
                    names,
                    counts(counts, java.util.Arrays.stream(counts).max().orElse(0))));
        }));
        return weeks;
    }

    private static WholeCounts counts(int[] draws, int most) {
        var weights = new double[most + 1];
        for (int draw : draws) {
            weights[Math.min(most, draw)]++;
        }
        return WholeCounts.ofWeights(weights);
    }
}
