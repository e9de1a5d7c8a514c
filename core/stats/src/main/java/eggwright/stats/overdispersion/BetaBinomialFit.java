package eggwright.stats.overdispersion;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.List;
import org.hipparchus.special.Gamma;

/**
 * The beta-binomial that makes the counts of many groups likeliest: one mean share, and how alike the eggs of one group
 * are beyond it. All log-likelihoods hold the binomial coefficients.
 *
 * <p>Error: estimates within 1e-5 and standard errors within 1e-4 of themselves of R, as {@code
 * BetaBinomialFitReferenceTest} checks. Source: Williams 1975, Biometrics 31:949; Prentice 1986, J. Am. Stat. Assoc.
 * 81:321 (from memory).
 */
public sealed interface BetaBinomialFit {
    /** Log-likelihood at its greatest. */
    double logLikelihood();

    /** The mean share over groups, 0 to 1. */
    double mean();

    /** 1 / (alpha + beta + 1), 0 to 1: 0 is no scatter between groups beyond luck. */
    double rho();

    /**
     * Groups scatter by more than luck.
     *
     * @param logitMean log(mean / (1 - mean))
     * @param logitMeanError its standard error
     * @param logitRho log(rho / (1 - rho))
     * @param logitRhoError its standard error
     * @param logLikelihood at its greatest
     */
    record Scattered(
            double logitMean, double logitMeanError, double logitRho, double logitRhoError, double logLikelihood)
            implements BetaBinomialFit {
        @Override
        public double mean() {
            return 1 / (1 + Math.exp(-logitMean));
        }

        @Override
        public double rho() {
            return 1 / (1 + Math.exp(-logitRho));
        }
    }

    /**
     * Groups scatter by no more than luck: rho is at its bound, and the counts are as one binomial.
     *
     * @param logitMean log(mean / (1 - mean))
     * @param logitMeanError its standard error
     * @param logLikelihood at its greatest
     */
    record NoMoreThanLuck(double logitMean, double logitMeanError, double logLikelihood) implements BetaBinomialFit {
        @Override
        public double mean() {
            return 1 / (1 + Math.exp(-logitMean));
        }

        @Override
        public double rho() {
            return 0;
        }
    }

    /**
     * None or all did, in every group: the mean is at its bound and nothing can be said of scatter.
     *
     * @param mean 0 or 1
     */
    record NoneOrAll(double mean) implements BetaBinomialFit {
        @Override
        public double logLikelihood() {
            return 0;
        }

        @Override
        public double rho() {
            return 0;
        }
    }

    /**
     * Fits groups of up to 10 million eggs each; empty ones say nothing.
     *
     * @throws OutOfRange if there is no egg in any group
     */
    static BetaBinomialFit of(List<Rate> groups) {
        var counts = new GroupCounts(groups);
        if (counts.pooled.isEmpty()) {
            throw new OutOfRange("0 eggs in " + groups.size() + " groups: there is nothing to learn a share from");
        }
        double mean = counts.pooled.share();
        if (mean == 0 || mean == 1) {
            return new NoneOrAll(mean);
        }
        double coefficients = 0;
        for (var g : groups) {
            coefficients += logChoose(g);
        }
        return new FitSearch(counts, coefficients).best();
    }

    private static double logChoose(Rate g) {
        return Gamma.logGamma(g.of() + 1.0)
                - Gamma.logGamma(g.count() + 1.0)
                - Gamma.logGamma(g.of() - g.count() + 1.0);
    }
}
