package eggwright.climate.machine;

import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Rollup;
import eggwright.trade.RoomHeat;
import java.util.List;

/**
 * The band of a room: the trade's, made wider by what the room has held itself in the days before. A room that works is not
 * held against a table.
 */
final class RoomBand {
    /** A sensor is never quite at the height of the chicks: ours. */
    private static final double ABOUT_ONE_FIGURE = 4;

    /** About what it has held: ours. */
    private static final double ABOUT_HABIT = 1;

    private static final int ENOUGH_HOURS = 48;

    private RoomBand() {}

    /** @param hours of the days before */
    static Band of(RoomHeat heat, List<Rollup> hours) {
        double about = heat.lowCelsius() == heat.highCelsius() ? ABOUT_ONE_FIGURE : 0;
        double low = heat.lowCelsius() - about;
        double high = heat.highCelsius() + about;
        if (hours.size() >= ENOUGH_HOURS) {
            var means = hours.stream().mapToDouble(Rollup::mean).sorted().toArray();
            // The coldest and the warmest tenth are left out: a bad day is no habit.
            int tenth = means.length / 10;
            low = Math.min(low, means[tenth] - ABOUT_HABIT);
            high = Math.max(high, means[means.length - 1 - tenth] + ABOUT_HABIT);
        }
        return new Band(low, high);
    }
}
