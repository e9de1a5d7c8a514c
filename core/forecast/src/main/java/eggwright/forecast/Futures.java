package eggwright.forecast;

import eggwright.book.name.SetName;
import eggwright.forecast.history.FirstCurve;
import eggwright.forecast.history.Passage;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * So many futures of a farm: in each, every set of every species has its own luck, and sets of one time share theirs.
 * The counts of a set are drawn from a seed of its own, so that a set asked for by itself gets the same answer.
 */
final class Futures {
    private static final long SEED = 0x45676777L;

    /** How often a future is drawn again that contradicts chicks already pulled. */
    private static final int TRIES = 50;

    private final Map<Species, Farm> farms;

    private Futures(Map<Species, Farm> farms) {
        this.farms = farms;
    }

    private record Farm(Chain chain, List<Chain.Future> futures) {}

    /** One species of a set: its way ahead in each future, and what is drawn. */
    private record Part(Ahead ahead, List<Chain.Future> futures, int[] drawn) {}

    static Futures of(List<Passage> passages, Function<Species, SpeciesProfile> profiles, Predicate<SetName> wanted) {
        var bySpecies = new TreeMap<Species, List<Passage>>();
        for (var passage : passages) {
            passage.allSpecies()
                    .forEach(s -> bySpecies
                            .computeIfAbsent(s, any -> new ArrayList<>())
                            .add(passage));
        }
        var farms = new TreeMap<Species, Farm>();
        bySpecies.forEach((species, mine) -> {
            var chain = Chain.of(species, mine, FirstCurve.of(profiles.apply(species)), wanted);
            var random = new SplittableRandom(SEED + species.word().hashCode());
            var drawn = new ArrayList<Chain.Future>();
            for (int i = 0; i < Forecaster.DRAWS; i++) {
                drawn.add(chain.future(random));
            }
            farms.put(species, new Farm(chain, drawn));
        });
        return new Futures(farms);
    }

    /** By species, a count of saleable chicks for each future; those of earlier pulls inside. */
    Map<Species, int[]> draw(Passage passage) {
        var random = new SplittableRandom(SEED + passage.set().text().hashCode());
        var parts = new TreeMap<Species, Part>();
        farms.forEach((species, farm) -> {
            if (!passage.waiting(species).isEmpty()) {
                parts.put(species, new Part(farm.chain.ahead(passage), farm.futures, new int[Forecaster.DRAWS]));
            }
        });
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
            part.drawn[i] = part.ahead.chicks(part.futures.get(i), grown, random);
            all += part.drawn[i];
        }
        return all;
    }
}
