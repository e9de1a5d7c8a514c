package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;

/** When the first shell is starred and when the chicks come, from the period. */
final class Hatch {
    /** Day 22.5 of a 24-day bird, from memory; internal pip, near 90 % of the period, comes before it (PRINZ2000). */
    private static final double FIRST_PIP_SHARE = 22.5 / 24.0;

    /** Chickens star on day 20 of 21; from memory. */
    private static final double FIRST_PIP_SHARE_CHICKEN = 20.0 / 21.0;

    /** Where a source gives the period as one figure: half a day before to half a day after; from memory. */
    private static final double HALF_WINDOW_DAYS = 0.5;

    private Hatch() {}

    static Sourced<FieldValue> firstPip(Species species, double periodDays, Source period) {
        var share = species == Species.CHICKEN ? FIRST_PIP_SHARE_CHICKEN : FIRST_PIP_SHARE;
        var words = species == Species.CHICKEN ? "day 20 of 21" : "day 22.5 of 24";
        return new Sourced<>(
                new FieldValue.Days(share * periodDays),
                new Source.Computed("external pip at " + words + " (from memory); period: " + period.words()));
    }

    static Sourced<FieldValue> window(Range<Double> period, Source source) {
        if (period.low() < period.high()) {
            return new Sourced<>(
                    new FieldValue.DaysRange(period),
                    new Source.Computed("from the shortest to the longest period: " + source.words()));
        }
        return new Sourced<>(
                around(period.low()),
                new Source.Computed("half a day either side of the period (from memory); period: " + source.words()));
    }

    static FieldValue.DaysRange around(double periodDays) {
        return new FieldValue.DaysRange(new Range<>(periodDays - HALF_WINDOW_DAYS, periodDays + HALF_WINDOW_DAYS));
    }
}
