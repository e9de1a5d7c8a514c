package eggwright.stats.doublesampling;

import eggwright.stats.interval.IntervalMethod;
import eggwright.stats.interval.Intervals;
import eggwright.stats.interval.Level;
import eggwright.units.OutOfRange;
import eggwright.units.Rate;

/**
 * Double sampling for a share: a large sample that a fallible look called yes or no, and a smaller one, taken without
 * regard to the call, of which the truth is known as well.
 *
 * <p>Source: Tenenbein 1970, J. Am. Stat. Assoc. 65:1350. Error: estimate and both variances within 1e-9 of R, as {@code
 * DoubleSampleReferenceTest} checks.
 *
 * @param calledYes only looked at, called yes
 * @param calledNo only looked at, called no
 * @param yesCalledYes truth known: yes, and called yes
 * @param yesCalledNo truth known: yes, but called no
 * @param noCalledYes truth known: no, but called yes
 * @param noCalledNo truth known: no, and called no
 */
public record DoubleSample(
        long calledYes, long calledNo, long yesCalledYes, long yesCalledNo, long noCalledYes, long noCalledNo) {
    public DoubleSample {
        long least = Math.min(
                Math.min(Math.min(calledYes, calledNo), Math.min(yesCalledYes, yesCalledNo)),
                Math.min(noCalledYes, noCalledNo));
        if (least < 0) {
            throw new OutOfRange("A count of " + least + " in a double sample is outside 0 or more");
        }
        if (yesCalledYes + yesCalledNo + noCalledYes + noCalledNo == 0) {
            throw new OutOfRange("The truth is known of 0 eggs: nothing can be corrected. Open at least 1");
        }
        check("yes", calledYes, yesCalledYes + noCalledYes);
        check("no", calledNo, yesCalledNo + noCalledNo);
    }

    private static void check(String call, long looked, long known) {
        if (looked > 0 && known == 0) {
            throw new OutOfRange(looked + " eggs were called " + call
                    + " but the truth is known of none of them: nothing can be said about these");
        }
    }

    /** Eggs of which the truth is known. */
    public long known() {
        return yesCalledYes + yesCalledNo + noCalledYes + noCalledNo;
    }

    /** All eggs. */
    public long all() {
        return known() + calledYes + calledNo;
    }

    /** The share that was called yes, 0 to 1: what one would say without opening any. */
    public double calledYesShare() {
        return (double) (calledYes + yesCalledYes + noCalledYes) / all();
    }

    /** Of those called yes, the share that are, 0 to 1; 0 where none was called yes. */
    public double trueOfCalledYes() {
        return share(yesCalledYes, noCalledYes);
    }

    /** Of those called no, the share that are yes after all, 0 to 1; 0 where none was called no. */
    public double trueOfCalledNo() {
        return share(yesCalledNo, noCalledNo);
    }

    /** The estimated true share, 0 to 1. */
    public double estimate() {
        double called = calledYesShare();
        return trueOfCalledYes() * called + trueOfCalledNo() * (1 - called);
    }

    /** Squared correlation of truth and call, 0 to 1: 0 is a look that says nothing, 1 one that is never wrong. */
    public double squaredCorrelation() {
        double p = estimate();
        double called = calledYesShare();
        double contrast = trueOfCalledYes() - trueOfCalledNo();
        return p * (1 - p) > 0 ? contrast * contrast * called * (1 - called) / (p * (1 - p)) : 0;
    }

    /** Tenenbein's large-sample variance of the estimate, his equation for V(p) with the estimates put in. */
    public double variance() {
        double p = estimate();
        double k = squaredCorrelation();
        return p * (1 - p) * ((1 - k) / known() + k / all());
    }

    /** The variance by the delta method with the calls as observed; the inverse of the observed information. */
    public double deltaVariance() {
        double called = calledYesShare();
        double a = trueOfCalledYes();
        double b = trueOfCalledNo();
        long knownYes = yesCalledYes + noCalledYes;
        long knownNo = yesCalledNo + noCalledNo;
        double fromYes = knownYes == 0 ? 0 : called * called * a * (1 - a) / knownYes;
        double fromNo = knownNo == 0 ? 0 : (1 - called) * (1 - called) * b * (1 - b) / knownNo;
        return fromYes + fromNo + (a - b) * (a - b) * called * (1 - called) / all();
    }

    /** How many eggs of known truth would tell as much, p(1 - p) / variance; the eggs of known truth at 0 and 1. */
    public double equivalentEggs() {
        double v = variance();
        return v > 0 ? estimate() * (1 - estimate()) / v : known();
    }

    /**
     * The estimate with a normal interval on the logit, from {@link #variance}. Where the variance is 0 (all or none
     * of those known were yes), the interval is Wilson's of the eggs of known
     * truth, which is wider than need be.
     */
    public CorrectedShare corrected(double level) {
        double p = estimate();
        double error = Math.sqrt(variance());
        if (error == 0) {
            var plain = Intervals.of(new Rate(yesCalledYes + yesCalledNo, known()), IntervalMethod.WILSON, level);
            return new CorrectedShare(p, 0, Math.min(p, plain.low()), Math.max(p, plain.high()), level);
        }
        double logit = Math.log(p / (1 - p));
        double half = Level.normalEnd(level) * error / (p * (1 - p));
        return new CorrectedShare(p, error, ofLogit(logit - half), ofLogit(logit + half), level);
    }

    private static double ofLogit(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }

    private static double share(long yes, long no) {
        return yes + no == 0 ? 0 : (double) yes / (yes + no);
    }
}
