package eggwright.stats.doublesampling;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Beta;

/**
 * The product of two independent beta values. Its distribution function is the second's, averaged over the first, on
 * the logit of the first. Where the first equals the share asked for, the second's distribution function ends in a
 * corner, so each side of the peak is summed by the double exponential rule, which does not mind corners at its ends.
 * Source of the rule: Takahasi and Mori 1974, Publ. RIMS 9:721 (from memory).
 */
final class BetaProduct {
    private static final double FAR_OUT = 34;
    private static final double CLOSE = 1e-11;
    private static final double NOTHING = 1e-16;
    private static final int MOST_STEPS = 500;
    private static final double RULE_STEP = 0.08;
    private static final int RULE_ENDS = 39;

    private final double firstYes;
    private final double firstNo;
    private final double yes;
    private final double no;
    private final double lowest;
    private final double peak;
    private final double highest;
    private final double logScale;

    BetaProduct(double firstYes, double firstNo, double yes, double no) {
        this.firstYes = firstYes;
        this.firstNo = firstNo;
        this.yes = yes;
        this.no = no;
        logScale = Beta.logBeta(firstYes, firstNo);
        peak = Math.log(firstYes / firstNo);
        double spread = Math.sqrt(1 / firstYes + 1 / firstNo);
        lowest = farOut(-spread);
        highest = farOut(spread);
    }

    /** The chance that the product is at most this share, 0 to 1. */
    double below(double share) {
        if (share >= 1) {
            return 1;
        }
        double corner = Math.log(share / (1 - share));
        double sum = Beta.regularizedBeta(share, firstYes, firstNo);
        double from = Math.max(lowest, corner);
        if (from < peak) {
            sum += part(share, from, peak);
            from = peak;
        }
        return from < highest ? sum + part(share, from, highest) : sum;
    }

    double quantile(double chance) {
        double low = 0.5;
        double high = 1;
        while (below(low) >= chance) {
            high = low;
            low /= 2;
        }
        var solver = new BracketingNthOrderBrentSolver(CLOSE, CLOSE * low, CLOSE * chance, 5);
        return solver.solve(MOST_STEPS, share -> below(share) - chance, low, high);
    }

    private double part(double share, double from, double to) {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        double sum = 0;
        for (int i = -RULE_ENDS; i <= RULE_ENDS; i++) {
            double t = i * RULE_STEP;
            double inner = Math.PI / 2 * Math.sinh(t);
            double cosh = Math.cosh(inner);
            double weight = RULE_STEP * Math.PI / 2 * Math.cosh(t) / (cosh * cosh);
            double logit = middle + half * Math.tanh(inner);
            double density = Math.exp(logDensity(logit));
            if (weight * half * density < NOTHING) {
                continue;
            }
            double ratio = share * (1 + Math.exp(-logit));
            double second = ratio >= 1 ? 1 : Beta.regularizedBeta(ratio, yes, no);
            sum += weight * density * second;
        }
        return half * sum;
    }

    private double farOut(double step) {
        double top = logDensity(peak);
        double logit = peak + step;
        while (top - logDensity(logit) < FAR_OUT) {
            logit += step;
        }
        return logit;
    }

    /** Of the first value's logit: yes log s + no log(1 - s) - log B(yes, no). */
    private double logDensity(double logit) {
        double minusLog = logit > 0 ? Math.log1p(Math.exp(-logit)) : -logit + Math.log1p(Math.exp(logit));
        return -firstYes * minusLog - firstNo * (logit + minusLog) - logScale;
    }
}
