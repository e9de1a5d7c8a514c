package eggwright.stats.overdispersion;

/**
 * Newton's method on the logits of mean and rho, started from the best of a coarse row of rhos. On these scales a step
 * cannot leave the range; where the surface is not yet a hill the step follows the slope instead.
 */
final class FitSearch {
    private static final double FIRST_LOG_SCATTER = -14;
    private static final double LAST_LOG_SCATTER = 6;
    private static final int MOST_STEPS = 200;
    private static final double FLAT = 1e-11;
    private static final double WORTH_HAVING = 1e-9;

    private final GroupCounts counts;
    private final double coefficients;

    // Where the search stands, and the slope and curvature there.
    private double logitMean;
    private double logScatter;
    private double slopeMean;
    private double slopeScatter;
    private double bendMean;
    private double bendScatter;
    private double bendBoth;

    FitSearch(GroupCounts counts, double coefficients) {
        this.counts = counts;
        this.coefficients = coefficients;
    }

    BetaBinomialFit best() {
        double pooled = counts.pooled.share();
        double pooledLogit = Math.log(pooled / (1 - pooled));
        double withoutScatter = at(pooledLogit, Double.NEGATIVE_INFINITY);
        logitMean = pooledLogit;
        logScatter = FIRST_LOG_SCATTER;
        double best = at(logitMean, logScatter);
        for (double row = FIRST_LOG_SCATTER + 1; row <= LAST_LOG_SCATTER; row++) {
            double here = at(pooledLogit, row);
            if (here > best) {
                best = here;
                logScatter = row;
            }
        }
        for (int i = 0; i < MOST_STEPS && step(); i++) {
            // A step says itself whether it got any higher.
        }
        double height = at(logitMean, logScatter);
        // Below the first row the scatter is less than one egg in a million and the likelihood is flat: no scatter.
        if (!(height > withoutScatter + WORTH_HAVING) || logScatter < FIRST_LOG_SCATTER) {
            double error = 1 / Math.sqrt(counts.pooled.of() * pooled * (1 - pooled));
            return new BetaBinomialFit.NoMoreThanLuck(pooledLogit, error, withoutScatter + coefficients);
        }
        look();
        double information = bendMean * bendScatter - bendBoth * bendBoth;
        return new BetaBinomialFit.Scattered(
                logitMean,
                Math.sqrt(-bendScatter / information),
                logScatter,
                Math.sqrt(-bendMean / information),
                height + coefficients);
    }

    private double at(double logit, double logScatterThere) {
        double mean = 1 / (1 + Math.exp(-logit));
        return counts.logLikelihood(mean, 1 / (1 + Math.exp(logit)), Math.exp(logScatterThere));
    }

    /** One step uphill; false where there is no higher to go. */
    private boolean step() {
        look();
        double information = bendMean * bendScatter - bendBoth * bendBoth;
        double towardsMean;
        double towardsScatter;
        if (bendMean < 0 && information > 0) {
            towardsMean = -(bendScatter * slopeMean - bendBoth * slopeScatter) / information;
            towardsScatter = -(bendMean * slopeScatter - bendBoth * slopeMean) / information;
        } else {
            towardsMean = slopeMean / (1 + Math.abs(bendMean));
            towardsScatter = slopeScatter / (1 + Math.abs(bendScatter));
        }
        double longest = Math.max(Math.abs(towardsMean), Math.abs(towardsScatter));
        double share = longest > 2 ? 2 / longest : 1;
        if (!(longest > FLAT)) {
            return false;
        }
        double height = at(logitMean, logScatter);
        while (share > 1e-10) {
            double mean = logitMean + share * towardsMean;
            double scatter = logScatter + share * towardsScatter;
            if (at(mean, scatter) > height) {
                logitMean = mean;
                logScatter = scatter;
                return true;
            }
            share /= 2;
        }
        return false;
    }

    /** Slope and curvature here, first by mean and scatter, then by their logits. */
    private void look() {
        double mean = 1 / (1 + Math.exp(-logitMean));
        double notMean = 1 / (1 + Math.exp(logitMean));
        double scatter = Math.exp(logScatter);
        double[] yes = sums(counts.yes.beyond, mean, scatter);
        double[] no = sums(counts.no.beyond, notMean, scatter);
        double[] all = sums(counts.all.beyond, 1, scatter);
        double byMean = yes[0] - no[0];
        double byScatter = yes[1] + no[1] - all[1];
        double meanTwice = -yes[2] - no[2];
        double both = -yes[3] + no[3];
        double scatterTwice = -yes[4] - no[4] + all[4];
        double stretch = mean * notMean;
        slopeMean = byMean * stretch;
        slopeScatter = byScatter * scatter;
        bendMean = meanTwice * stretch * stretch + byMean * stretch * (notMean - mean);
        bendBoth = both * stretch * scatter;
        bendScatter = scatterTwice * scatter * scatter + byScatter * scatter;
    }

    /** Sums over j of beyond(j) times 1/w, j/w, 1/w^2, j/w^2, j^2/w^2 with w = base + j scatter. */
    private static double[] sums(int[] beyond, double base, double scatter) {
        double[] sum = new double[5];
        for (int j = 0; j < beyond.length; j++) {
            double over = 1 / (base + j * scatter);
            double first = beyond[j] * over;
            double second = first * over;
            sum[0] += first;
            sum[1] += j * first;
            sum[2] += second;
            sum[3] += j * second;
            sum[4] += (double) j * j * second;
        }
        return sum;
    }
}
