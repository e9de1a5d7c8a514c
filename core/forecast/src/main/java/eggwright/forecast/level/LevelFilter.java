package eggwright.forecast.level;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Learns how well one stage goes on a farm from its sets in order of time, and draws what further sets may do.
 *
 * <p>Model: the offset of set s from the trade's losses is theta_s = level(t_s) + e_s; the level wanders
 * (random walk, normal steps with variance drift² per week), e_s is normal with spread {@code sets}, trays scatter about
 * theta_s as beta-binomials with rho {@code trays}. The level begins at N(0, {@value #FIRST_SPREAD}²): a weight of about
 * a dozen eggs for the trade's figures, since published farms differ by that much (pheasant fertility 47 to 88.5 %). All
 * four unknowns are carried on a grid; nothing is assumed away. Forward filtering, backward sampling (Carter and Kohn
 * 1994, Biometrika 81:541; from memory) on the grid.
 */
public final class LevelFilter {
    /** Spread of farms about the trade's published level, in logits. */
    static final double FIRST_SPREAD = 0.8;

    private static final double NEGLIGIBLE = 1e-4;

    private final List<Branch> branches;
    private final double[] cumulated;
    private final int sets;

    private LevelFilter(List<Branch> branches, int sets) {
        this.branches = branches;
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
        final Scatter scatter;
        final double[] setKernel;
        final double[][] filtered;
        final double[][] stepKernels;
        final double[][] likelihoods;
        double weight;

        Branch(Scatter scatter, int sets) {
            this.scatter = scatter;
            this.setKernel = Grid.kernel(scatter.sets());
            this.filtered = new double[sets][];
            this.stepKernels = new double[sets][];
            this.likelihoods = new double[sets][];
        }
    }

    /** Learns from sets in order of set day; those without counts are carried along, to be drawn. */
    public static LevelFilter of(List<Observed> sets) {
        var trays = Scatter.trayGuesses();
        var tables = sets.stream().map(s -> Likelihood.of(s.counts(), trays)).toList();
        var branches = new ArrayList<Branch>();
        var logs = new ArrayList<Double>();
        var setKernels = new java.util.HashMap<Double, double[]>();
        for (var scatter : Scatter.guesses()) {
            var branch = new Branch(scatter, sets.size());
            int t = indexOf(trays, scatter.trays());
            double log = Math.log(scatter.weight()) + forward(branch, sets, tables, t);
            branches.add(branch);
            logs.add(log);
            setKernels.putIfAbsent(scatter.sets(), branch.setKernel);
        }
        double greatest = logs.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double total = 0;
        for (int i = 0; i < branches.size(); i++) {
            branches.get(i).weight = Math.exp(logs.get(i) - greatest);
            total += branches.get(i).weight;
        }
        for (var branch : branches) {
            branch.weight /= total;
        }
        return new LevelFilter(
                branches.stream().filter(b -> b.weight > NEGLIGIBLE).toList(), sets.size());
    }

    private static int indexOf(double[] guesses, double value) {
        for (int i = 0; i < guesses.length; i++) {
            if (Double.compare(guesses[i], value) == 0) {
                return i;
            }
        }
        throw new IllegalArgumentException("No guess of " + value);
    }

    private static double forward(Branch branch, List<Observed> sets, List<Likelihood.Table> tables, int tray) {
        var level = Grid.spread(point(), Grid.kernel(FIRST_SPREAD));
        double log = 0;
        var kernels = new java.util.HashMap<Long, double[]>();
        for (int s = 0; s < sets.size(); s++) {
            if (s > 0) {
                long days = ChronoUnit.DAYS.between(
                        sets.get(s - 1).setOn(), sets.get(s).setOn());
                var kernel = kernels.computeIfAbsent(
                        days, d -> Grid.kernel(branch.scatter.drift() * Math.sqrt(Math.max(0, d) / 7.0)));
                branch.stepKernels[s] = kernel;
                level = Grid.spread(level, kernel);
            }
            if (!sets.get(s).counts().isEmpty()) {
                var likelihood = tables.get(s).scaled[tray];
                branch.likelihoods[s] = likelihood;
                // The kernel is symmetric: spreading the likelihood gives that of the level, the set's own part summed
                // out.
                var ofLevel = spreadBack(likelihood, branch.setKernel);
                for (int i = 0; i < Grid.POINTS; i++) {
                    level[i] *= ofLevel[i];
                }
                log += Math.log(Grid.normalise(level)) + tables.get(s).logScale[tray];
            }
            branch.filtered[s] = level.clone();
        }
        return log;
    }

    private static double[] spreadBack(double[] ofSet, double[] kernel) {
        var out = new double[Grid.POINTS];
        for (int level = 0; level < Grid.POINTS; level++) {
            double sum = 0;
            for (int set = 0; set < Grid.POINTS; set++) {
                sum += kernel[set - level + Grid.POINTS - 1] * ofSet[set];
            }
            out[level] = sum;
        }
        return out;
    }

    private static double[] point() {
        var point = new double[Grid.POINTS];
        point[(Grid.POINTS - 1) / 2] = 1;
        return point;
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

    /**
     * Draws the offsets of the sets from {@code first} to the last.
     *
     * @param first index of the first set to draw
     */
    public Draw draw(int first, RandomGenerator random) {
        var branch = branches.get(pick(cumulated, random.nextDouble() * cumulated[cumulated.length - 1]));
        var offsets = new double[sets - first];
        int level = -1;
        for (int s = sets - 1; s >= first; s--) {
            var density = branch.filtered[s].clone();
            if (level >= 0) {
                var kernel = branch.stepKernels[s + 1];
                for (int i = 0; i < Grid.POINTS; i++) {
                    density[i] *= kernel[level - i + Grid.POINTS - 1];
                }
            }
            level = pickFrom(density, random);
            offsets[s - first] = offset(branch, s, level, random);
        }
        return new Draw(offsets, branch.scatter.trays());
    }

    private static double offset(Branch branch, int s, int level, RandomGenerator random) {
        var density = new double[Grid.POINTS];
        var likelihood = branch.likelihoods[s];
        for (int i = 0; i < Grid.POINTS; i++) {
            density[i] = branch.setKernel[i - level + Grid.POINTS - 1] * (likelihood == null ? 1 : likelihood[i]);
        }
        // Within a step of the grid every offset is as likely as another.
        return Grid.at(pickFrom(density, random)) + (random.nextDouble() - 0.5) * Grid.STEP;
    }

    private static int pickFrom(double[] density, RandomGenerator random) {
        var sums = new double[density.length];
        double total = 0;
        for (int i = 0; i < density.length; i++) {
            total += density[i];
            sums[i] = total;
        }
        return pick(sums, random.nextDouble() * total);
    }

    private static int pick(double[] sums, double at) {
        int found = java.util.Arrays.binarySearch(sums, at);
        int place = found >= 0 ? found + 1 : -found - 1;
        return Math.min(place, sums.length - 1);
    }

    /** The mean over guesses of the spread of whole sets, in logits; and of the likeness within trays. */
    public Learnt learnt() {
        double drift = 0;
        double setSpread = 0;
        double rho = 0;
        double total = 0;
        for (var branch : branches) {
            drift += branch.weight * branch.scatter.drift();
            setSpread += branch.weight * branch.scatter.sets();
            rho += branch.weight * branch.scatter.trays();
            total += branch.weight;
        }
        return new Learnt(drift / total, setSpread / total, rho / total);
    }

    /**
     * What was learnt of the scatter: posterior means.
     *
     * @param driftLogitsPerWeek spread of the level's wandering in a week
     * @param setSpreadLogits spread of whole sets about the level
     * @param trayRho likeness of eggs of one tray beyond its set
     */
    public record Learnt(double driftLogitsPerWeek, double setSpreadLogits, double trayRho) {}
}
