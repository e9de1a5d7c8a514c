package eggwright.desk.rate;

import eggwright.book.picture.Picture;
import eggwright.rates.Contrasts;
import eggwright.rates.Dimension;
import eggwright.rates.RateReport;

/** All that is known of the groups of one kind. Worked out at once: correcting a fertility takes a millisecond. */
record RatesOf(
        Dimension by,
        RateReport report,
        Contrasts fertilityContrasts,
        Contrasts hatchContrasts,
        Comparison fertility,
        Comparison hatch) {
    static RatesOf of(Picture picture, Dimension by) {
        var report = RateReport.of(picture, by);
        var fertility = Contrasts.fertility(picture, by);
        var hatch = Contrasts.hatchOfFertile(picture, by);
        return new RatesOf(
                by,
                report,
                fertility,
                hatch,
                Comparison.fertility(report, fertility, by),
                Comparison.hatch(report, hatch, by));
    }
}
