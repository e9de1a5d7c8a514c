package eggwright.desk.rate;

import eggwright.desk.part.RateShown;
import eggwright.desk.words.Words;
import eggwright.stats.interval.Intervals;
import eggwright.units.Rate;
import java.util.Locale;

/** A rate in one line: counts, share and 95 % interval. */
public final class RatesWorded {
    private RatesWorded() {}

    /** As "51 of 54, 94 % (85 to 98)", or that there is nothing to count yet. */
    public static String say(Rate rate, Locale language) {
        var words = Words.beside(RatesWorded.class, language);
        if (rate.isEmpty()) {
            return words.say("notYet");
        }
        var interval = Intervals.wilson95(rate);
        return words.say(
                "rate",
                rate.count(),
                rate.of(),
                RateShown.share(rate.pct(), 100 * interval.low(), 100 * interval.high(), language));
    }
}
