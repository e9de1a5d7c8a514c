package eggwright.forecast;

import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.forecast.history.StageKind;
import eggwright.forecast.level.Beforehand;
import eggwright.forecast.level.Observed;
import eggwright.forecast.level.StageDraws;
import eggwright.forecast.level.StageLevels;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * So many futures of a farm: in each, every set of every species has its own luck, and sets of one time share theirs.
 * The counts of a set are drawn from a seed of its own, so that a set asked for by itself gets the same answer.
 */
final class Futures {
    private static final long SEED = 0x45676777L;

    /** How often a future is drawn again that contradicts chicks already pulled. */
    private static final int TRIES = 50;

    private final List<Passage> passages;
    private final List<Chain> chains;
    private final Map<StageKind, StageDraws> levels = new EnumMap<>(StageKind.class);

    private Futures(List<Passage> passages, List<Chain> chains) {
        this.passages = passages;
        this.chains = chains;
    }

    /** One species of a set: its way ahead, and what is drawn. */
    private record Part(Ahead ahead, int[] drawn) {}

    /** @param passages in order of set day */
    static Futures of(List<Passage> passages, Function<Species, SpeciesProfile> profiles) {
        var bySpecies = new TreeMap<Species, List<Passage>>();
        for (var passage : passages) {
            passage.allSpecies()
                    .forEach(s -> bySpecies
                            .computeIfAbsent(s, any -> new ArrayList<>())
                            .add(passage));
        }
        var chains = new ArrayList<Chain>();
        bySpecies.forEach(
                (species, mine) -> chains.add(new Chain(species, mine, FirstCurve.of(profiles.apply(species)))));
        var futures = new Futures(passages, chains);
        int first = 0;
        while (first < passages.size() && passages.get(first).waiting().isEmpty()) {
            first++;
        }
        for (var kind : StageKind.values()) {
            if (chains.stream().anyMatch(chain -> chain.needs(kind))) {
                futures.levels.put(
                        kind,
                        futures.learn(kind)
                                .draw(
                                        Forecaster.DRAWS,
                                        first,
                                        SEED + kind.word().hashCode()));
            }
        }
        return futures;
    }

    private StageLevels learn(StageKind kind) {
        var passing = chains.stream().filter(chain -> chain.passes(kind)).toList();
        var observed = new ArrayList<Observed>();
        for (var passage : passages) {
            var parts = new EnumMap<Species, Observed.Part>(Species.class);
            passing.stream()
                    .filter(chain -> chain.isIn(passage))
                    .forEach(chain -> parts.put(chain.species(), chain.part(passage, kind)));
            observed.add(new Observed(passage.setOn(), parts));
        }
        var beforehand = new TreeMap<Species, Beforehand>();
        passing.forEach(chain -> beforehand.put(chain.species(), chain.beforehand(kind)));
        return StageLevels.of(observed, beforehand);
    }

    /** By species, a count of saleable chicks for each future; those of earlier pulls inside. */
    Map<Species, int[]> draw(Passage passage) {
        var random = new SplittableRandom(SEED + passage.set().text().hashCode());
        var parts = new TreeMap<Species, Part>();
        int set = passages.indexOf(passage);
        for (var chain : chains) {
            if (!passage.waiting(chain.species()).isEmpty()) {
                parts.put(chain.species(), new Part(chain.ahead(passage, set, levels), new int[Forecaster.DRAWS]));
            }
        }
        int in = passage.waiting().stream().mapToInt(Passage.Waiting::eggs).sum();
        int before = passage.chicksSoFar();
        if (parts.isEmpty()) {
            var sure = new int[Forecaster.DRAWS];
            Arrays.fill(sure, before);
            return Map.of(passage.species(), sure);
        }
        // After a first pull the whole must be at least what was pulled: draw the whole again until it is.
        double grown = (in + before) / (double) in;
        for (int i = 0; i < Forecaster.DRAWS; i++) {
            int all = draw(parts.values(), i, grown, random);
            for (int tries = 1; tries < TRIES && (all < before || all > before + in); tries++) {
                all = draw(parts.values(), i, grown, random);
            }
            if (all < before || all > before + in) {
                for (var part : parts.values()) {
                    part.drawn[i] = 0;
                }
                parts.firstEntry().getValue().drawn[i] = before;
            }
        }
        var found = new LinkedHashMap<Species, int[]>();
        parts.forEach((species, part) -> found.put(species, part.drawn));
        return found;
    }

    private static int draw(Collection<Part> parts, int i, double grown, SplittableRandom random) {
        int all = 0;
        for (var part : parts) {
            part.drawn[i] = part.ahead.chicks(i, grown, random);
            all += part.drawn[i];
        }
        return all;
    }
}
