package eggwright.climate.excursion;

import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Rollup;
import eggwright.units.Temperature;
import java.util.List;

/**
 * The band in which a machine works: half a degree about what it has held itself, hour by hour, in its last days; a machine
 * that has hardly been read, half a degree about its set-point. A working habit is never held against a table: what a
 * machine holds steadily is its band, unless it is outside anything that eggs bear.
 */
public final class WorkingBand {
    /** Half a degree Celsius, about a degree Fahrenheit: alarm bands of the trade are 97 to 102 F (from memory). */
    public static final double HALF_WIDTH = 0.5;

    /** Two days of hours. */
    private static final int ENOUGH_HOURS = 48;

    /** No machine for eggs works outside, whatever it holds: ours. */
    private static final double LEAST = 36;

    private static final double MOST = 39.5;

    /** Outside of that it stood idle, or was on its way: what it held then is no habit. Ours. */
    private static final double AT_WORK_FROM = 34;

    private static final double AT_WORK_TO = 41;

    private WorkingBand() {}

    /** @param hours of the last days; those in which it stood idle are passed over */
    public static Band of(List<Rollup> hours, Temperature setPoint) {
        double middle = setPoint.celsius();
        var means = hours.stream()
                .mapToDouble(Rollup::mean)
                .filter(mean -> mean >= AT_WORK_FROM && mean <= AT_WORK_TO)
                .sorted()
                .toArray();
        if (means.length >= ENOUGH_HOURS) {
            middle = Math.clamp(means[means.length / 2], LEAST, MOST);
        }
        return new Band(middle - HALF_WIDTH, middle + HALF_WIDTH);
    }
}
