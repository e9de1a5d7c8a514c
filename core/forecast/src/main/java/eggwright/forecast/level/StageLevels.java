package eggwright.forecast.level;

import eggwright.forecast.chance.Grid;
import eggwright.forecast.chance.Resampling;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Learns how well one stage goes on a farm, for all its species together, from its sets in order of time, and draws what
 * may be true of them.
 *
 * <p>Model: the offset of the eggs of one species and one pen in one set, from what the trade's losses make expected, is level +
 * slope times week + wandering + the set's own luck + the pen's offset; trays scatter about it as beta-binomials. Wandering (normal
 * steps, by week) and sets' luck (normal) strike the losses, each for itself and in all species alike: a stage moves as far as its
 * species loses by that class. What is believed beforehand is the caller's.
 *
 * <p>Under each guess at the scatter the counts are stood for by normals near where they are likeliest (Laplace), sets are gone
 * through forward and drawn backward (as Carter and Kohn 1994, On Gibbs sampling for state space models, Biometrika
 * 81:541-553, the volume from memory, the paper not read), and the draws weighed by what the counts say beyond the normals and the
 * published levels beyond theirs (importance sampling), so that the answer is not that of the normals.
 */
public final class StageLevels {
    /** Guesses less likely than this share of the likeliest are not drawn. */
    private static final double NEGLIGIBLE = 1e-4;

    private final Field field;
    private final List<Guess> guesses = new ArrayList<>();
    /** By guess at the scatter of trays, set and cell. */
    private final List<List<List<Cell.Normal>>> normals = new ArrayList<>();

    private StageLevels(Field field) {
        this.field = field;
    }

    /**
     * @param tray which guess at the scatter of trays
     * @param log how likely it is, the counts taken in
     */
    private record Guess(Pass pass, int tray, double log) {}

    /**
     * @param sets in order of set day; those without counts are drawn all the same
     * @param beforehand by species
     */
    public static StageLevels of(List<Observed> sets, SortedMap<Species, Beforehand> beforehand) {
        var levels = new StageLevels(Field.of(sets, beforehand));
        levels.learn();
        return levels;
    }

    private void learn() {
        var likeliest = new Likeliest(field);
        var trays = Scatter.trays();
        for (int t = 0; t < trays.size(); t++) {
            var here = likeliest.normals(t);
            normals.add(here);
            for (var spread : Scatter.sets()) {
                var seen = Seen.all(field, here, spread.value());
                for (var drift : Scatter.drifts()) {
                    for (var pens : field.pens.isEmpty() ? List.of(new Scatter.Guess(1, 1)) : Scatter.pens()) {
                        var pass = new Pass(field, drift.value(), pens.value(), seen);
                        double chance = trays.get(t).chance() * spread.chance() * drift.chance() * pens.chance();
                        guesses.add(new Guess(pass, t, pass.log + Math.log(chance)));
                    }
                }
            }
        }
    }

    /**
     * Draws from what was learnt, weighed and drawn again, so that all count alike.
     *
     * @param first set that is kept of each draw
     */
    public StageDraws draw(int count, int first, long seed) {
        var random = new SplittableRandom(seed);
        double greatest = guesses.stream()
                .mapToDouble(Guess::log)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        var likely = guesses.stream()
                .filter(g -> g.log() > greatest + Math.log(NEGLIGIBLE))
                .toList();
        var which = Resampling.systematic(
                likely.stream().mapToDouble(g -> Math.exp(g.log() - greatest)).toArray(), count, random.nextDouble());
        var rests = rests(likely);
        var draws = new StageDraws.Draw[count];
        var logs = new double[count];
        for (int i = 0; i < count; i++) {
            var guess = likely.get(which[i]);
            var path = guess.pass().draw(random);
            draws[i] = new StageDraws.Draw(
                    path.from(first), Scatter.trays().get(guess.tray()).value());
            logs[i] = beyond(path, rests.get(guess.tray()));
        }
        var kept = Resampling.systematic(Resampling.truncated(logs), count, random.nextDouble());
        Resampling.shuffle(kept, random);
        return new StageDraws(
                field, first, Arrays.stream(kept).mapToObj(i -> draws[i]).toArray(StageDraws.Draw[]::new));
    }

    /** What the counts say beyond the normals, by tray guess, set and cell; empty for guesses that are not likely. */
    private List<double[][][]> rests(List<Guess> likely) {
        return IntStream.range(0, normals.size())
                .mapToObj(t -> likely.stream().noneMatch(g -> g.tray() == t)
                        ? new double[0][][]
                        : IntStream.range(0, field.sets.size())
                                .mapToObj(s -> IntStream.range(
                                                0, field.cells.get(s).size())
                                        .mapToObj(c -> field.cells
                                                .get(s)
                                                .get(c)
                                                .beyond(normals.get(t).get(s).get(c), t))
                                        .toArray(double[][]::new))
                                .toArray(double[][][]::new))
                .toList();
    }

    private double beyond(Pass.Path path, double[][][] rests) {
        double log = 0;
        for (int a = 0; a < field.species(); a++) {
            log += Grid.between(field.levels.get(a).beyond(), path.level()[a]);
        }
        for (int s = 0; s < rests.length; s++) {
            var cells = field.cells.get(s);
            for (int c = 0; c < cells.size(); c++) {
                var cell = cells.get(c);
                log += Grid.between(rests[s][c], path.lies()[s][cell.species] + cell.ofPens(path.pens()));
            }
        }
        return log;
    }
}
