package eggwright.stats.chart;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.List;

/**
 * What is normal: the share that counts are held against, and by how much they scatter from one to the next.
 *
 * <p>Source: the centre, Shewhart's p chart as in NIST/SEMATECH e-Handbook 6.3.3.2; the scatter, Laney 2002, Qual. Eng.
 * 14:531, with his divisor 1.128. Error: within 1e-10 of R, as {@code ChartReferenceTest} checks.
 *
 * @param center the share, 0 to 1
 * @param scatter mean size of the change from one count to the next, in standard deviations by luck, over 1.128: 1 is luck
 *     alone; not a number where fewer than two counts can tell
 */
public record Baseline(double center, double scatter) {
    private static final double LANEYS_DIVISOR = 1.128;

    public Baseline {
        OutOfRange.check("A chart's centre of", center, 0, 1, "");
    }

    /**
     * Learnt from counts in their order; empty ones say nothing.
     *
     * @throws OutOfRange if nothing was counted
     */
    public static Baseline of(List<Rate> counts) {
        var all = counts.stream().reduce(new Rate(0, 0), Rate::plus);
        if (all.isEmpty()) {
            throw new OutOfRange("0 trials in " + counts.size() + " counts: there is no normal to hold them against");
        }
        return around(all.share(), counts);
    }

    /** With a share that is known, and the scatter of counts about it. */
    public static Baseline around(double center, List<Rate> counts) {
        double sum = 0;
        int changes = 0;
        double before = Double.NaN;
        for (var count : counts) {
            if (count.isEmpty()) {
                continue;
            }
            double error = Math.sqrt(center * (1 - center) / count.of());
            double now = error > 0 ? (count.share() - center) / error : 0;
            if (!Double.isNaN(before)) {
                sum += Math.abs(now - before);
                changes++;
            }
            before = now;
        }
        return new Baseline(center, changes == 0 ? Double.NaN : sum / changes / LANEYS_DIVISOR);
    }

    /** Standard deviation, by luck, of the share in so many. */
    double error(long of) {
        return Math.sqrt(center * (1 - center) / of);
    }
}
