package eggwright.stats.predictive;

import eggwright.units.OutOfRange;
import java.util.List;
import java.util.function.IntFunction;

/**
 * A distribution over whole counts 0 to {@code most}. Never changes.
 *
 * <p>Only the counts that matter are held: at either end, counts less likely than 1e-30 of the likeliest one are taken
 * as impossible. The chances sum to 1 to within rounding. Error: chances within 1e-9 of themselves, as {@code
 * BetaBinomialReferenceTest} checks against R.
 */
public final class WholeCounts {
    private static final double NEGLIGIBLE = 1e-30;

    /** Chances are sums of up to millions of rounded terms; a quantile must not hang on their last digits. */
    private static final double ROUNDING = 1e-13;

    private final int most;
    private final int first;
    private final double[] chance;

    private WholeCounts(int most, int first, double[] chance) {
        this.most = most;
        this.first = first;
        this.chance = chance;
    }

    /**
     * Chances in proportion to weights.
     *
     * @param most highest count that could come; at least the last count with a weight
     * @param first the count that the first weight stands for
     * @param weights at least 0, not all 0
     */
    static WholeCounts ofWeights(int most, int first, double[] weights) {
        double total = 0;
        double greatest = 0;
        for (double w : weights) {
            if (!(w >= 0 && w < Double.POSITIVE_INFINITY)) {
                throw new OutOfRange("A chance in proportion to " + w + " is outside 0 to infinity");
            }
            total += w;
            greatest = Math.max(greatest, w);
        }
        if (!(total > 0)) {
            throw new OutOfRange("The chances of 0 to " + most + " sum to " + total + "; at least one must be above 0");
        }
        int from = 0;
        while (weights[from] <= NEGLIGIBLE * greatest) {
            from++;
        }
        int to = weights.length;
        while (weights[to - 1] <= NEGLIGIBLE * greatest) {
            to--;
        }
        double[] chance = new double[to - from];
        for (int i = from; i < to; i++) {
            chance[i - from] = weights[i] / total;
        }
        return new WholeCounts(most, first + from, chance);
    }

    /** Chances in proportion to weights, the first of them for a count of 0. */
    public static WholeCounts ofWeights(double... weights) {
        return ofWeights(weights.length - 1, 0, weights);
    }

    /** A count that is already known: this many, out of this many. */
    public static WholeCounts certain(int count) {
        OutOfRange.check("A known count of", count, 0, Integer.MAX_VALUE, "eggs");
        return new WholeCounts(count, count, new double[] {1});
    }

    /** One of several distributions, each in proportion to its weight: as when one does not know which holds. */
    public static WholeCounts mixture(List<WholeCounts> parts, double[] weights) {
        if (parts.isEmpty() || parts.size() != weights.length) {
            throw new OutOfRange(parts.size() + " parts with " + weights.length + " weights do not make a mixture");
        }
        int most = 0;
        int first = Integer.MAX_VALUE;
        int end = 0;
        for (var part : parts) {
            most = Math.max(most, part.most);
            first = Math.min(first, part.first);
            end = Math.max(end, part.first + part.chance.length);
        }
        double[] sum = new double[end - first];
        for (int i = 0; i < weights.length; i++) {
            var part = parts.get(i);
            addScaled(sum, part.first - first, part.chance, weights[i]);
        }
        return ofWeights(most, first, sum);
    }

    /** The highest count that could come. */
    public int most() {
        return most;
    }

    /** The chance of exactly {@code k}; 0 where {@code k} cannot come. */
    public double pmf(int k) {
        int i = k - first;
        return 0 <= i && i < chance.length ? chance[i] : 0;
    }

    /** The chance of at most {@code k}. */
    public double cdf(int k) {
        double sum = 0;
        for (int i = 0; i < chance.length && i <= (long) k - first; i++) {
            sum += chance[i];
        }
        return Math.min(1, sum);
    }

    /** The chance of {@code k} or more, summed from the top so that a small one keeps its digits. */
    public double atLeast(int k) {
        double sum = 0;
        for (int i = chance.length - 1; i >= 0 && i >= (long) k - first; i--) {
            sum += chance[i];
        }
        return Math.min(1, sum);
    }

    public double mean() {
        double sum = 0;
        for (int i = 0; i < chance.length; i++) {
            sum += i * chance[i];
        }
        return first + sum;
    }

    public double variance() {
        double middle = mean() - first;
        double sum = 0;
        for (int i = 0; i < chance.length; i++) {
            sum += (i - middle) * (i - middle) * chance[i];
        }
        return sum;
    }

    /**
     * The smallest count that is not exceeded with at least this chance. A chance short of it by no more than 1e-13
     * counts as reached.
     *
     * @param q 0 to 1
     */
    public int quantile(double q) {
        OutOfRange.check("A quantile's chance of", q, 0, 1, "");
        double sum = 0;
        for (int i = 0; i < chance.length; i++) {
            sum += chance[i];
            if (sum >= q - ROUNDING) {
                return first + i;
            }
        }
        return first + chance.length - 1;
    }

    /** The range that leaves at most half of what is wanting to {@code level} on either side. */
    public CountInterval interval(double level) {
        if (!(level > 0 && level < 1)) {
            throw new OutOfRange("A range's level of " + level + " is outside 0 to 1 (0.8 and 0.95 are usual)");
        }
        return new CountInterval(quantile((1 - level) / 2), quantile((1 + level) / 2), level);
    }

    /**
     * Where an observed count fell, spread evenly over its own step: cdf(k - 1) + u pmf(k). Over many forecasts that
     * were right these are uniform on 0 to 1, which plain ranges of whole counts cannot be.
     *
     * <p>Source: Czado, Gneiting and Held 2009, Biometrics 65:1254; from memory.
     *
     * @param k the count that came
     * @param u a uniform random number, 0 to 1, from the caller's seed
     */
    public double randomisedPit(int k, double u) {
        OutOfRange.check("A random share of", u, 0, 1, "");
        return Math.min(1, (k == 0 ? 0 : cdf(k - 1)) + u * pmf(k));
    }

    /** The sum of this count and an independent one. */
    public WholeCounts plus(WholeCounts other) {
        return new WholeCounts(
                Math.addExact(most, other.most), first + other.first, Sums.ofIndependent(chance, other.chance));
    }

    /** The sum of independent counts, the small ones first; none of them sum to a certain 0. */
    public static WholeCounts sum(List<WholeCounts> parts) {
        return Sums.smallestFirst(parts);
    }

    /** How many chances are held; what a sum costs. */
    int width() {
        return chance.length;
    }

    /** This count, where as many more are certain. */
    public WholeCounts plusCertain(int more) {
        OutOfRange.check("A known count of", more, 0, Integer.MAX_VALUE, "eggs");
        return new WholeCounts(Math.addExact(most, more), first + more, chance);
    }

    /** What is left of {@code all} when this count is taken away; {@code all} is at least {@link #most}. */
    public WholeCounts takenFrom(int all) {
        OutOfRange.check("A whole of", all, most, Integer.MAX_VALUE, "eggs");
        double[] turned = new double[chance.length];
        for (int i = 0; i < chance.length; i++) {
            turned[chance.length - 1 - i] = chance[i];
        }
        return new WholeCounts(all, all - (first + chance.length - 1), turned);
    }

    /** Two stages: this many enter, and of those that enter a share gets through that is the same for all of them. */
    public WholeCounts thinnedBy(ScatteredShare share) {
        return thinnedBy(share::of);
    }

    /**
     * Two stages: this many enter, and {@code then} says how many of them get through.
     *
     * @param then for a count that enters, the distribution of those that get through
     */
    public WholeCounts thinnedBy(IntFunction<WholeCounts> then) {
        double[] sum = new double[most + 1];
        for (int i = 0; i < chance.length; i++) {
            var through = then.apply(first + i);
            if (through.first + through.chance.length - 1 > most) {
                throw new OutOfRange("Of " + (first + i) + " that enter, " + through.most + " would get through");
            }
            addScaled(sum, through.first, through.chance, chance[i]);
        }
        return ofWeights(most, 0, sum);
    }

    private static void addScaled(double[] sum, int from, double[] part, double factor) {
        for (int i = 0; i < part.length; i++) {
            sum[from + i] += factor * part[i];
        }
    }
}
