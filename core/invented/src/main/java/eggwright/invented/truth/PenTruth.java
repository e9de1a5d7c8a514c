package eggwright.invented.truth;

import eggwright.trade.Species;

/**
 * One pen. Lay rises to its peak, stays, and falls.
 *
 * @param layPct eggs of a hundred hens a day at the peak
 * @param layRiseDays from the first egg to the peak
 * @param layPeakDays at the peak
 * @param layFallPctPerWeek share of the rate lost each week after the peak
 * @param fertilityPct true fertility at the start of the season
 * @param driftSd spread of the weekly steps by which the pen's fertility wanders, in logits
 */
public record PenTruth(
        String name,
        Species species,
        int cocks,
        int hens,
        double layPct,
        int layRiseDays,
        int layPeakDays,
        double layFallPctPerWeek,
        double fertilityPct,
        double driftSd) {
    public static final PenTruth PLAIN = new PenTruth("Pen", Species.PHEASANT, 2, 16, 66, 14, 56, 6, 90, 0.05);

    public PenTruth {
        name = new eggwright.book.name.PenName(name).text();
        Within.range("cocks", cocks, 0, 1000);
        Within.range("hens", hens, 0, 10_000);
        Within.pct("lay_pct", layPct);
        Within.range("lay_rise_days", layRiseDays, 0, 365);
        Within.range("lay_peak_days", layPeakDays, 0, 365);
        Within.pct("lay_fall_pct_per_week", layFallPctPerWeek);
        Within.pct("fertility_pct", fertilityPct);
        Within.range("drift_sd", driftSd, 0, 5);
    }

    public static PenTruth of(String name, Species species, int cocks, int hens, double layPct, double fertilityPct) {
        return new PenTruth(
                name,
                species,
                cocks,
                hens,
                layPct,
                PLAIN.layRiseDays,
                PLAIN.layPeakDays,
                PLAIN.layFallPctPerWeek,
                fertilityPct,
                PLAIN.driftSd);
    }

    public PenTruth withFertility(double pct, double drift) {
        return new PenTruth(
                name, species, cocks, hens, layPct, layRiseDays, layPeakDays, layFallPctPerWeek, pct, drift);
    }

    /** Eggs a hen a day, so many days after the first egg of the season. */
    public double layRate(long day) {
        double peak = layPct / 100;
        if (day < layRiseDays) {
            return peak * (day + 1) / (layRiseDays + 1);
        }
        long past = day - layRiseDays - layPeakDays;
        return past <= 0 ? peak : peak * Math.pow(1 - layFallPctPerWeek / 100, past / 7.0);
    }
}
