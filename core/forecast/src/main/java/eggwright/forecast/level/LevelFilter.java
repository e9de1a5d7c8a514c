package eggwright.forecast.level;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Learns how well one stage goes on a farm from its sets in order of time, and draws what further sets may do.
 *
 * <p>Model: the offset of set s from the trade's losses is theta_s = level(t_s) + e_s; the level wanders (a slope
 * through the season, and a random walk of normal steps with variance drift² a week), e_s is normal with spread {@code sets}, trays scatter about theta_s as
 * beta-binomials with rho {@code trays}. What is believed beforehand is the caller's. All
 * unknowns are carried on a grid. Forward filtering, backward sampling on the grid (Carter and Kohn 1994, On Gibbs
 * sampling for state space models, Biometrika 81:541-553; the volume from memory, the paper not read).
 */
public final class LevelFilter {
    private static final double NEGLIGIBLE = 1e-4;

    private final List<Branch> branches;
    private final double[] cumulated;
    private final int first;
    private final int sets;

    private LevelFilter(List<Branch> branches, int first, int sets) {
        this.branches = branches;
        this.first = first;
        this.sets = sets;
        this.cumulated = new double[branches.size()];
        double total = 0;
        for (int i = 0; i < branches.size(); i++) {
            total += branches.get(i).weight;
            cumulated[i] = total;
        }
    }

    /** One guess at the scatter, with what was learnt under it. */
    private static final class Branch {
        final double slope;
        final double drift;
        final double trays;
        final Kernel ofSets;
        final List<Observed> sets;
        final double[][] filtered;
        final Kernel[] steps;
        final double[][] likelihoods;
        double log;
        double weight;

        Branch(double slope, double drift, double trays, double chance, Kernel ofSets, List<Observed> sets) {
            this.slope = slope;
            this.drift = drift;
            this.trays = trays;
            this.log = Math.log(chance);
            this.ofSets = ofSets;
            this.sets = sets;
            this.filtered = new double[sets.size()][];
            this.steps = new Kernel[sets.size()];
            this.likelihoods = new double[sets.size()][0];
        }

        void forward(List<Seen> seen, int first, double[] beforehand) {
            var level = beforehand.clone();
            var kernels = new HashMap<Long, Kernel>();
            for (int s = 0; s < sets.size(); s++) {
                if (s > 0) {
                    long days = ChronoUnit.DAYS.between(
                            sets.get(s - 1).setOn(), sets.get(s).setOn());
                    steps[s] = kernels.computeIfAbsent(days, d -> Kernel.of(drift * Math.sqrt(Math.max(0, d) / 7.0)));
                    level = steps[s].spread(level);
                }
                var here = seen.get(s);
                if (here.ofLevel.length > 0) {
                    likelihoods[s] = here.ofSet;
                    for (int i = 0; i < Grid.POINTS; i++) {
                        level[i] *= here.ofLevel[i];
                    }
                    log += Math.log(Grid.normalise(level)) + here.logScale;
                }
                if (s >= first) {
                    filtered[s] = level.clone();
                }
            }
        }
    }

    /**
     * How likely the counts of one set are, under one slope and one scatter of trays.
     *
     * @param ofSet for each offset of the set
     * @param ofLevel for each level, the set's own part summed out; empty where nothing was counted
     */
    private record Seen(double[] ofSet, double[] ofLevel, double logScale) {
        static final Seen NOTHING = new Seen(new double[0], new double[0], 0);
    }

    /**
     * Learns from sets in order of set day; those without counts are carried along, to be drawn.
     *
     * @param first index of the first set that will be drawn; what was learnt of earlier ones is not kept
     */
    public static LevelFilter of(List<Observed> sets, int first, Beforehand beforehand) {
        var trays = Scatter.trays();
        var logs = sets.stream().map(s -> Likelihood.logs(s.counts(), trays)).toList();
        var branches = new ArrayList<Branch>();
        for (var slope : Scatter.slopes(beforehand)) {
            for (int t = 0; t < trays.size(); t++) {
                var tray = trays.get(t);
                var rows = new ArrayList<Likelihood.Row>();
                for (int s = 0; s < sets.size(); s++) {
                    rows.add(Likelihood.shifted(
                            logs.get(s)[t], slope.value() * sets.get(s).week()));
                }
                for (var spread : Scatter.sets(beforehand)) {
                    var ofSets = Kernel.of(spread.value());
                    var seen = seen(sets, rows, ofSets);
                    for (var drift : Scatter.drifts(beforehand)) {
                        double chance = slope.chance() * tray.chance() * spread.chance() * drift.chance();
                        var branch = new Branch(slope.value(), drift.value(), tray.value(), chance, ofSets, sets);
                        branch.forward(seen, first, beforehand.level());
                        branches.add(branch);
                    }
                }
            }
        }
        return new LevelFilter(weighed(branches), first, sets.size());
    }

    private static List<Seen> seen(List<Observed> sets, List<Likelihood.Row> rows, Kernel ofSets) {
        var seen = new ArrayList<Seen>();
        for (int s = 0; s < sets.size(); s++) {
            var row = rows.get(s);
            seen.add(
                    sets.get(s).counts().isEmpty()
                            ? Seen.NOTHING
                            : new Seen(row.scaled(), ofSets.spread(row.scaled()), row.logScale()));
        }
        return seen;
    }

    private static List<Branch> weighed(List<Branch> branches) {
        double greatest = branches.stream().mapToDouble(b -> b.log).max().orElse(0);
        double total = 0;
        for (var branch : branches) {
            branch.weight = Math.exp(branch.log - greatest);
            total += branch.weight;
        }
        for (var branch : branches) {
            branch.weight /= total;
        }
        return branches.stream().filter(b -> b.weight > NEGLIGIBLE).toList();
    }

    /** One draw of the offsets of some sets, jointly, and of the scatter of trays. */
    public static final class Draw {
        private final double[] offsets;
        private final double trayRho;

        private Draw(double[] offsets, double trayRho) {
            this.offsets = offsets;
            this.trayRho = trayRho;
        }

        /** The offset of a set, in logits, counted from the first that was drawn. */
        public double offset(int set) {
            return offsets[set];
        }

        /** Likeness of eggs within a tray, 0 to 1. */
        public double trayRho() {
            return trayRho;
        }
    }

    /** Draws the offsets of the sets from the first to the last. */
    public Draw draw(RandomGenerator random) {
        var branch = branches.get(place(cumulated, cumulated.length, random));
        var offsets = new double[sets - first];
        var sums = new double[Grid.POINTS];
        int level = -1;
        for (int s = sets - 1; s >= first; s--) {
            level = level < 0
                    ? pick(branch.filtered[s], sums, random)
                    : near(level, branch.steps[s + 1], branch.filtered[s], sums, random);
            // Within a step of the grid every offset is as likely as another.
            offsets[s - first] = Grid.at(near(level, branch.ofSets, branch.likelihoods[s], sums, random))
                    + (random.nextDouble() - 0.5) * Grid.STEP
                    + branch.slope * branch.sets.get(s).week();
        }
        return new Draw(offsets, branch.trays);
    }

    /** A point near another, in proportion to the kernel and to {@code weights}; an empty array weighs all alike. */
    private static int near(int centre, Kernel kernel, double[] weights, double[] sums, RandomGenerator random) {
        int low = Math.max(0, centre - kernel.reach());
        int high = Math.min(Grid.POINTS - 1, centre + kernel.reach());
        double total = 0;
        for (int i = low; i <= high; i++) {
            total += kernel.at(i - centre) * (weights.length == 0 ? 1 : weights[i]);
            sums[i - low] = total;
        }
        return low + place(sums, high - low + 1, random);
    }

    private static int pick(double[] density, double[] sums, RandomGenerator random) {
        double total = 0;
        for (int i = 0; i < Grid.POINTS; i++) {
            total += density[i];
            sums[i] = total;
        }
        return place(sums, Grid.POINTS, random);
    }

    private static int place(double[] sums, int length, RandomGenerator random) {
        double at = random.nextDouble() * sums[length - 1];
        int found = Arrays.binarySearch(sums, 0, length, at);
        int place = found >= 0 ? found + 1 : -found - 1;
        return Math.min(place, length - 1);
    }
}
