package eggwright.forecast.level;

import eggwright.forecast.chance.Belief;
import eggwright.forecast.chance.Cholesky;
import eggwright.trade.Species;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * All that is unknown of one stage on one farm, and how it hangs together. The quantities of a {@link Belief} about it are, in this
 * order: the level of each species, its slope, the offset of each pen.
 */
final class Field {
    /**
     * No two species have all their luck in common: so much variance each has for itself, for luck of one logit in each loss.
     * Ours, and small: it keeps the sums regular.
     */
    private static final double OWN = 1e-4;

    final List<Observed> sets;
    final List<Species> kinds;
    final List<Beforehand> beforehand;
    final List<Pen> pens;
    /** What was counted, by set. */
    final List<List<Cell>> cells = new ArrayList<>();
    /** Each species' level. */
    final List<Published> levels;
    /** Variance of the stages of all species, for luck of one logit in each loss. */
    private final double[] luck;
    /** Variance by which a species' pens, as a whole, part from the farm in a week. */
    private final double[] parting;

    private Field(List<Observed> sets, List<Species> kinds, List<Beforehand> beforehand, Map<Pen, Integer> pens) {
        this.sets = sets;
        this.kinds = kinds;
        this.beforehand = beforehand;
        this.pens = List.copyOf(pens.keySet());
        int species = beforehand.size();
        this.levels = beforehand.stream().map(b -> Published.of(b.level())).toList();
        this.luck = new double[species * species];
        this.parting = new double[species];
        for (int a = 0; a < species; a++) {
            for (int b = 0; b < species; b++) {
                luck[a * species + b] = beforehand.get(a).inCommon(beforehand.get(b)) + (a == b ? OWN : 0);
            }
            var kind = kinds.get(a);
            long own = this.pens.stream().filter(p -> p.species() == kind).count();
            parting[a] = square(Beforehand.PEN_DRIFT) / Math.max(1, own) * luck[a * species + a];
        }
        for (var set : sets) {
            cells.add(cells(set, pens));
        }
    }

    static Field of(List<Observed> sets, SortedMap<Species, Beforehand> beforehand) {
        var names = new TreeSet<Pen>(
                Comparator.comparing(Pen::species).thenComparing(p -> p.name().text()));
        for (var set : sets) {
            for (var part : set.parts().values()) {
                part.counts().forEach(c -> names.addAll(c.pens().keySet()));
                names.addAll(part.waiting());
            }
        }
        var pens = new LinkedHashMap<Pen, Integer>();
        names.forEach(pen -> pens.put(pen, pens.size()));
        return new Field(sets, List.copyOf(beforehand.keySet()), List.copyOf(beforehand.values()), pens);
    }

    private List<Cell> cells(Observed set, Map<Pen, Integer> places) {
        var found = new ArrayList<Cell>();
        for (int species = 0; species < kinds.size(); species++) {
            var alike = new LinkedHashMap<Map<Pen, Double>, List<Observed.Count>>();
            for (var count : part(set, kinds.get(species)).counts()) {
                alike.computeIfAbsent(count.pens(), any -> new ArrayList<>()).add(count);
            }
            for (var counts : alike.entrySet()) {
                var shares = counts.getKey().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey(Comparator.comparing(places::get)))
                        .toList();
                found.add(new Cell(
                        species,
                        beforehand.get(species),
                        shares.stream().mapToInt(s -> places.get(s.getKey())).toArray(),
                        shares.stream().mapToDouble(Map.Entry::getValue).toArray(),
                        counts.getValue()));
            }
        }
        return found;
    }

    private static Observed.Part part(Observed set, Species species) {
        return set.parts().getOrDefault(species, Observed.Part.NONE);
    }

    int species() {
        return beforehand.size();
    }

    int size() {
        return 2 * species() + pens.size();
    }

    double week(int set, int species) {
        return part(sets.get(set), kinds.get(species)).week();
    }

    /** Since the set before. */
    double weeksSince(int set) {
        return Math.max(
                        0,
                        ChronoUnit.DAYS.between(
                                sets.get(set - 1).setOn(), sets.get(set).setOn()))
                / 7.0;
    }

    /** Variance of the species' stages, for luck of this variance in each loss. */
    double[] luck(double variance) {
        var scaled = luck.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= variance;
        }
        return scaled;
    }

    /** Variance of the species' wandering over so many weeks: what befalls all, and the pens of each, which go their own ways. */
    double[] wandering(double drift, double weeks) {
        var variance = luck(drift * drift * weeks);
        for (int a = 0; a < parting.length; a++) {
            variance[a * parting.length + a] += parting[a] * weeks;
        }
        return variance;
    }

    /** What is believed before anything was counted. */
    Belief beforehand(double penSpread) {
        int m = species();
        var belief = new Belief(size());
        double log = 0;
        for (int a = 0; a < m; a++) {
            var level = levels.get(a);
            log += known(belief, a, 1 / square(level.spread()), level.mean());
        }
        var slopes = Cholesky.of(luck(square(beforehand.getFirst().slopeSpread())), m);
        log -= slopes.logDeterminant() / 2;
        var inverse = slopes.inverse();
        for (int a = 0; a < m; a++) {
            System.arraycopy(inverse, a * m, belief.precision, (m + a) * belief.size + m, m);
        }
        for (int p = 0; p < pens.size(); p++) {
            int a = kinds.indexOf(pens.get(p).species());
            log += known(belief, 2 * m + p, 1 / (square(penSpread) * luck[a * m + a]), 0);
        }
        belief.log = log;
        return belief;
    }

    private static double known(Belief belief, int i, double precision, double mean) {
        belief.precision[i * belief.size + i] = precision;
        belief.pull[i] = precision * mean;
        return Math.log(precision) / 2 - precision * mean * mean / 2;
    }

    private static double square(double x) {
        return x * x;
    }
}
