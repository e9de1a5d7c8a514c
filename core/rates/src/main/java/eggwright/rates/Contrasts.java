package eggwright.rates;

import eggwright.book.picture.Picture;
import eggwright.stats.chances.RateDifference;
import eggwright.stats.chances.Scatter;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which groups differ from the farm's own normal by more than luck.
 *
 * <p>Each group stands against the rest of the farm. Trays of one group scatter by more than luck; by how much is
 * learnt from this book and widens every comparison (quasi-binomial; see {@code docs/models/contrasts.md}). Groups are
 * not evened out for week, machine or egg age: a pen that laid only in May is compared as it is.
 *
 * @param measure what was compared
 * @param scatter how much trays, or what was counted together, scatter within groups
 * @param contrasts one for each single group that has any eggs, in the order of the groups
 */
public record Contrasts(Measure measure, Scatter scatter, List<Contrast> contrasts) {
    /** Fewer eggs on either side say nothing. Own choice, no source. */
    public static final int LEAST_EGGS = 20;

    /** Scatter known by less than this is not known. Own choice, no source. */
    public static final int LEAST_DEGREES = 3;

    /** Where fewer are expected in a cell, the exact chance speaks too. Source: Cochran 1954, Biometrics 10:417. */
    private static final double LEAST_EXPECTED = 5;

    public Contrasts {
        contrasts = List.copyOf(contrasts);
    }

    /** The fertility that the groups have in common; apparent where they stand on different bases. */
    public static Contrasts fertility(Picture picture, Dimension by) {
        var groups = groups(picture, by);
        return of(groups, measure(groups));
    }

    public static Contrasts hatchOfFertile(Picture picture, Dimension by) {
        return of(groups(picture, by), Measure.HATCH_OF_FERTILE);
    }

    private static List<GroupSum> groups(Picture picture, Dimension by) {
        return Gathering.of(picture.accounts(), by.keys(picture)).groups();
    }

    private static Measure measure(List<GroupSum> groups) {
        return switch (FertilityRanking.of(groups.stream().map(GroupSum::rates).toList())) {
            case FertilityRanking.AsCounted ranking -> Measure.FERTILITY;
            case FertilityRanking.NothingSeen ranking -> Measure.FERTILITY;
            case FertilityRanking.Corrected ranking -> Measure.APPARENT_FERTILITY;
            case FertilityRanking.AtTheLamp ranking -> Measure.APPARENT_FERTILITY;
            case FertilityRanking.Not ranking -> Measure.APPARENT_FERTILITY;
        };
    }

    private static Contrasts of(List<GroupSum> groups, Measure measure) {
        var scatter = Scatter.within(groups.stream().map(g -> units(g, measure)).toList());
        var found = new ArrayList<Contrast>();
        for (var group : groups) {
            var mine = sum(group, measure);
            if (group.keys.size() > 1 || mine.isEmpty()) {
                continue;
            }
            var key = group.keys.getFirst();
            var rest = groups.stream()
                    .filter(g -> !g.keys.contains(key))
                    .map(g -> sum(g, measure))
                    .reduce(new Rate(0, 0), Rate::plus);
            found.add(one(key, mine, rest, scatter));
        }
        return new Contrasts(measure, scatter, adjusted(found));
    }

    private static Contrast one(String key, Rate group, Rate rest, Scatter scatter) {
        if (group.of() < LEAST_EGGS || rest.of() < LEAST_EGGS || scatter.degreesOfFreedom() < LEAST_DEGREES) {
            return new Contrast.TooFew(key, group, rest);
        }
        double chance = scatter.chance(group, rest);
        double rarer = Math.min(group.plus(rest).share(), 1 - group.plus(rest).share());
        if (Math.min(group.of(), rest.of()) * rarer < LEAST_EXPECTED) {
            chance = Math.max(chance, RateDifference.of(group, rest, 0.95).exactChance());
        }
        return new Contrast.Compared(key, group, rest, chance, chance);
    }

    /** Holm 1979, Scand. J. Stat. 6:65: the smallest chance times all, the next times one fewer, never falling. */
    private static List<Contrast> adjusted(List<Contrast> contrasts) {
        var compared = new ArrayList<Contrast.Compared>();
        for (var contrast : contrasts) {
            if (contrast instanceof Contrast.Compared it) {
                compared.add(it);
            }
        }
        compared.sort(Comparator.comparingDouble(Contrast.Compared::chance));
        var result = new ArrayList<>(contrasts);
        double before = 0;
        for (int i = 0; i < compared.size(); i++) {
            var it = compared.get(i);
            before = Math.max(before, Math.min(1, it.chance() * (compared.size() - i)));
            result.set(result.indexOf(it), new Contrast.Compared(it.key(), it.group(), it.rest(), it.chance(), before));
        }
        return result;
    }

    private static Rate sum(GroupSum group, Measure measure) {
        return switch (measure) {
            case FERTILITY -> group.fertility.rate();
            case APPARENT_FERTILITY -> group.apparent.rate();
            case HATCH_OF_FERTILE -> group.hatchOfFertile.rate();
        };
    }

    private static List<Rate> units(GroupSum group, Measure measure) {
        return switch (measure) {
            case FERTILITY -> group.fertilityUnits;
            case APPARENT_FERTILITY -> group.apparentUnits;
            case HATCH_OF_FERTILE -> group.hatchOfFertileUnits;
        };
    }
}
