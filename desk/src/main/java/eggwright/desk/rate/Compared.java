package eggwright.desk.rate;

import eggwright.desk.picture.IntervalPlot.Standing;
import eggwright.rates.Contrast;
import eggwright.rates.GroupRates;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.Comparator;
import java.util.Optional;

/**
 * One group in a picture of rates.
 *
 * @param counted so many of so many
 * @param share in percent, with its interval: that of the count, or one corrected by opened clears
 * @param contrast against the rest of the farm; empty for a joint group, which is not compared
 */
record Compared(GroupRates group, Rate counted, Share share, Optional<Contrast> contrast) {
    /** The worst that is hardly luck, then the best that is, then the rest from the lowest, and what cannot be told last. */
    static final Comparator<Compared> WHAT_MATTERS = Comparator.<Compared, Integer>comparing(
                    c -> switch (c.standing()) {
                        case BELOW -> 0;
                        case ABOVE -> 1;
                        case USUAL -> 2;
                        case TOO_FEW -> 3;
                    })
            .thenComparingDouble(c -> c.share().pct());

    /** In percent, 0 to 100. */
    record Share(double pct, double lowPct, double highPct) {
        /** Of a count that is not empty, with Wilson's interval. */
        static Share of(Rate rate) {
            var interval = Intervals.wilson95(rate);
            return new Share(rate.pct(), 100 * interval.low(), 100 * interval.high());
        }
    }

    Standing standing() {
        return VerdictWords.standing(contrast);
    }
}
