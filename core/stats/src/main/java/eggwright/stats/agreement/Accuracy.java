package eggwright.stats.agreement;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;

/**
 * How often a yes-or-no call is right, of things whose truth was learnt afterwards. Each rate is 0 of 0, so that nothing
 * can be said, where there is nothing to take a share of; {@link eggwright.stats.interval.Intervals#wilson95} puts its
 * limits round it, as Wilson 1927, J. Am. Stat. Assoc. 22:209.
 *
 * <p>Names and formulas: Altman and Bland 1994, Br. Med. J. 308:1552 and 309:102 (from memory). Sensitivity and
 * specificity belong to the person at the lamp; the predictive values also to how common the thing is, and are not
 * carried over to another pen or day.
 *
 * @param truePositive called yes, and it is
 * @param falsePositive called yes, and it is not
 * @param falseNegative called no, but it is
 * @param trueNegative called no, and it is not
 */
public record Accuracy(long truePositive, long falsePositive, long falseNegative, long trueNegative) {
    public Accuracy {
        long least = Math.min(Math.min(truePositive, falsePositive), Math.min(falseNegative, trueNegative));
        if (least < 0) {
            throw new OutOfRange("A count of " + least + " calls is outside 0 or more");
        }
    }

    /** Called yes, of those that are. */
    public Rate sensitivity() {
        return of(truePositive, falseNegative);
    }

    /** Called no, of those that are not. */
    public Rate specificity() {
        return of(trueNegative, falsePositive);
    }

    /** Of those called yes, those that are. */
    public Rate positivePredictiveValue() {
        return of(truePositive, falsePositive);
    }

    /** Of those called no, those that are not. */
    public Rate negativePredictiveValue() {
        return of(trueNegative, falseNegative);
    }

    private static Rate of(long count, long rest) {
        return new Rate(count, Math.addExact(count, rest));
    }
}
