package eggwright.stats.chart;

import eggwright.units.OutOfRange;
import eggwright.units.Rate;
import java.util.ArrayList;
import java.util.List;

/**
 * Counts in their order, each with the limits that luck would keep it in.
 *
 * <p>Error: within 1e-10 of R over eight published and simulated series, as {@code ChartReferenceTest} checks. How often
 * limits are left by luck alone: {@link RunLength}.
 *
 * @param center what they are held against, 0 to 1
 * @param points one for each count
 */
public record ControlChart(double center, List<Point> points) {
    public ControlChart {
        points = List.copyOf(points);
    }

    /**
     * One count on the chart. An empty one has no value, and limits that say nothing.
     *
     * @param index 1 for the first
     * @param value what is charted, a share; not a number where nothing was counted and nothing is carried on
     * @param low limit, cut at 0
     * @param high limit, cut at 1
     * @param outside whether the value lies beyond a limit
     */
    public record Point(int index, double value, double low, double high, boolean outside) {}

    /**
     * Each share by itself, against luck alone (p chart). Source: NIST/SEMATECH e-Handbook 6.3.3.2.
     *
     * @param width limits in standard deviations; 3 is usual
     */
    public static ControlChart plain(List<Rate> counts, Baseline baseline, double width) {
        return shares(counts, baseline, width, 1);
    }

    /**
     * Each share by itself, against luck times the scatter from one count to the next (p' chart). Source: Laney 2002, Qual.
     * Eng. 14:531.
     *
     * @throws OutOfRange if the scatter is not known
     */
    public static ControlChart overdispersed(List<Rate> counts, Baseline baseline, double width) {
        if (Double.isNaN(baseline.scatter())) {
            throw new OutOfRange("The scatter from one count to the next cannot be told from fewer than 2 counts. "
                    + "Count more, or choose the plain chart");
        }
        return shares(counts, baseline, width, baseline.scatter());
    }

    private static ControlChart shares(List<Rate> counts, Baseline baseline, double width, double scatter) {
        checkWidth(width);
        var points = new ArrayList<Point>();
        for (var count : counts) {
            double half = count.isEmpty() ? Double.POSITIVE_INFINITY : width * scatter * baseline.error(count.of());
            points.add(point(points.size() + 1, count.share(), baseline.center(), half));
        }
        return new ControlChart(baseline.center(), points);
    }

    /**
     * A running mean that forgets, against luck times a scatter (EWMA), with the variance carried on exactly from count to
     * count. A count of nothing changes nothing. Source: Lucas and Saccucci 1990, Technometrics 32:1.
     *
     * @param weight of the newest count, above 0 to 1; 0.2 is usual
     * @param scatter standard deviation of a count over that by luck; 1 is luck alone
     */
    public static ControlChart ewma(List<Rate> counts, Baseline baseline, double weight, double width, double scatter) {
        checkWidth(width);
        if (!(weight > 0 && weight <= 1)) {
            throw new OutOfRange("A weight of " + weight + " for the newest count is outside above 0 to 1");
        }
        OutOfRange.check("A scatter of", scatter, 0, 1e6, "times luck");
        double mean = baseline.center();
        double variance = 0;
        var points = new ArrayList<Point>();
        for (var count : counts) {
            if (!count.isEmpty()) {
                double error = scatter * baseline.error(count.of());
                mean = weight * count.share() + (1 - weight) * mean;
                variance = weight * weight * error * error + (1 - weight) * (1 - weight) * variance;
            }
            points.add(point(points.size() + 1, mean, baseline.center(), width * Math.sqrt(variance)));
        }
        return new ControlChart(baseline.center(), points);
    }

    private static Point point(int index, double value, double center, double half) {
        double low = Math.max(0, center - half);
        double high = Math.min(1, center + half);
        // A value that differs from a limit by its rounding alone is on it.
        double rounding = 1e-14;
        return new Point(index, value, low, high, value < low - rounding || value > high + rounding);
    }

    private static void checkWidth(double width) {
        if (!(width > 0 && width <= 100)) {
            throw new OutOfRange(
                    "Limits of " + width + " standard deviations are outside above 0 to 100 standard deviations");
        }
    }
}
