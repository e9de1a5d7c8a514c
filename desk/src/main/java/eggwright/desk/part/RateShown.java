package eggwright.desk.part;

import eggwright.desk.words.Words;
import java.util.Locale;
import java.util.Optional;

/**
 * A rate as it is shown: never a percentage alone.
 *
 * @param count those that did
 * @param of those that could have
 * @param share worded, as "94 % (85 to 98)"; empty where there was nothing to count
 */
public record RateShown(long count, long of, Optional<String> share) {
    /**
     * A rate and its interval, rounded to whole percent, or to tenths where the interval is narrower than two.
     *
     * @param lowPct the lower end, 0 to 100
     * @param highPct the upper end, 0 to 100
     */
    public static RateShown of(long count, long of, double lowPct, double highPct, Locale language) {
        if (of == 0) {
            return new RateShown(count, of, Optional.empty());
        }
        return new RateShown(count, of, Optional.of(share(100.0 * count / of, lowPct, highPct, language)));
    }

    /** A share with its interval, in percent, where no single count stands behind it. */
    public static String share(double pct, double lowPct, double highPct, Locale language) {
        var form = highPct - lowPct < 2 ? "%.1f" : "%.0f";
        return Words.beside(RateShown.class, language)
                .say(
                        "share",
                        String.format(language, form, pct),
                        String.format(language, form, lowPct),
                        String.format(language, form, highPct));
    }
}
