package eggwright.stats.overdispersion;

import eggwright.stats.predictive.ScatteredShare;
import eggwright.stats.predictive.WholeCounts;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * What a farm's own groups (trays, loads) teach about a share: a posterior over the mean of all groups and over the
 * scatter between them. Starts from the trade's figure at a stated weight and follows the groups as they come in.
 *
 * <p>Model: each group has its own share, drawn from a beta; mean ~ Beta(mean w, (1 - mean) w); rho on the prior's grid.
 * Error: predictive chances within 1e-6 of a fine integration (1e-3 from a belief worth two eggs), as {@code LearntShareTest} checks. Source: the
 * beta-binomial of Skellam 1948 with a prior on both parameters; Gelman et al., Bayesian Data Analysis, 3rd ed., section
 * 5.3 (from memory).
 */
public final class LearntShare {
    private final SharePrior prior;
    private final List<Rate> groups;
    private final List<LearntCell> cells;

    private LearntShare(SharePrior prior, List<Rate> groups, List<LearntCell> cells) {
        this.prior = prior;
        this.groups = groups;
        this.cells = cells;
    }

    /**
     * Learns from groups; with none of them the prior is what is known.
     *
     * @param prior what is believed beforehand
     * @param groups so many of so many in each group, in any order; empty ones say nothing
     */
    public static LearntShare of(SharePrior prior, List<Rate> groups) {
        var cells = new PosteriorGrid(prior, new GroupCounts(groups)).cells();
        return new LearntShare(prior, List.copyOf(groups), List.copyOf(cells));
    }

    /** Learns from further groups as well. */
    public LearntShare and(List<Rate> more) {
        var all = new ArrayList<>(groups);
        all.addAll(more);
        return of(prior, all);
    }

    /** All possibilities with their weights, by rising mean; the weights sum to 1. */
    public List<LearntCell> cells() {
        return cells;
    }

    /** The mean share over groups, 0 to 1, as now believed. */
    public double mean() {
        return expected(cell -> cell.share().mean());
    }

    /** How sure that mean is: its standard deviation. */
    public double meanError() {
        double middle = mean();
        return Math.sqrt(
                expected(cell -> (cell.share().mean() - middle) * (cell.share().mean() - middle)));
    }

    /** The scatter between groups as now believed: the mean of rho, 0 to 1. */
    public double rho() {
        return expected(cell -> cell.share().rho());
    }

    /** How many of {@code eggs} in a group not yet seen. */
    public WholeCounts predictNew(int eggs) {
        return predict(OpenGroup.ofNew(eggs));
    }

    /**
     * How many of the further eggs of one group. What was seen of the group has to be among the groups learnt from (add
     * it by {@link #and}); here it moves the group's own share.
     */
    public WholeCounts predict(OpenGroup group) {
        return mixed(share -> share.after(group.seen()).of(group.further()));
    }

    /**
     * How many of the further eggs of several groups together. They share an unknown mean, so their sum is wider than if
     * each were predicted on its own and these were added.
     */
    public WholeCounts predictTogether(List<OpenGroup> open) {
        return mixed(share -> WholeCounts.sum(open.stream()
                .map(group -> share.after(group.seen()).of(group.further()))
                .toList()));
    }

    /** How many get through this stage, of a count that is itself uncertain, all in one group. */
    public WholeCounts thin(WholeCounts entering, Rate seen) {
        return mixed(share -> entering.thinnedBy(share.after(seen)));
    }

    /**
     * How often a group like the others would fall at least as far from the middle, on either side, as this one: 0 to 1.
     * Scatter between groups is in it, so a small chance means more than luck and more than the usual tray to tray. Half
     * of the chance of the very count seen is counted (mid-p). The group should not be among those learnt from.
     */
    public double chanceOfAsFar(Rate group) {
        var normal = predictNew(Math.toIntExact(group.of()));
        int k = Math.toIntExact(group.count());
        double below = normal.randomisedPit(k, 0.5);
        double above = normal.atLeast(k + 1) + 0.5 * normal.pmf(k);
        return Math.min(1, 2 * Math.min(below, above));
    }

    /**
     * The same knowledge in fewer cells, for sums over many groups: for each rho, neighbouring means are joined until
     * each holds about one part in {@code means}. The mean is kept exactly; a dozen means keep its variance to within 5
     * in 100. Rhos of less than one in ten thousand are left out.
     *
     * @param means parts for each rho, 2 to 40
     */
    public LearntShare coarser(int means) {
        OutOfRange.check("A number of means of", means, 2, 40, "");
        var byRho = new TreeMap<Double, List<LearntCell>>();
        for (var cell : cells) {
            byRho.computeIfAbsent(cell.share().rho(), rho -> new ArrayList<>()).add(cell);
        }
        var joined = new ArrayList<LearntCell>();
        byRho.forEach((rho, row) -> {
            double whole = row.stream().mapToDouble(LearntCell::weight).sum();
            if (whole >= 1e-4) {
                joined.addAll(join(rho, row, whole / means));
            }
        });
        double kept = joined.stream().mapToDouble(LearntCell::weight).sum();
        var even = joined.stream()
                .map(cell -> new LearntCell(cell.share(), cell.weight() / kept))
                .sorted(Comparator.comparingDouble(cell -> cell.share().mean()))
                .toList();
        return new LearntShare(prior, groups, even);
    }

    private static List<LearntCell> join(double rho, List<LearntCell> row, double enough) {
        var joined = new ArrayList<LearntCell>();
        double weight = 0;
        double moment = 0;
        for (int i = 0; i < row.size(); i++) {
            weight += row.get(i).weight();
            moment += row.get(i).weight() * row.get(i).share().mean();
            if (weight >= enough || (i == row.size() - 1 && weight > 0)) {
                joined.add(new LearntCell(new ScatteredShare(Math.min(1, moment / weight), rho), weight));
                weight = 0;
                moment = 0;
            }
        }
        return joined;
    }

    private WholeCounts mixed(Function<ScatteredShare, WholeCounts> of) {
        var parts = new ArrayList<WholeCounts>(cells.size());
        double[] weights = new double[cells.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = cells.get(i).weight();
            parts.add(of.apply(cells.get(i).share()));
        }
        return WholeCounts.mixture(parts, weights);
    }

    private double expected(ToDoubleFunction<LearntCell> of) {
        double sum = 0;
        for (var cell : cells) {
            sum += cell.weight() * of.applyAsDouble(cell);
        }
        return sum;
    }
}
