package eggwright.climate.machine;

import eggwright.climate.rollup.Band;
import eggwright.climate.rollup.Rollup;
import eggwright.trade.RoomHeat;
import java.util.List;

/**
 * The band of a room: the trade's, made wider by what the room has held itself in the week before. A room that works is not
 * held against a table; but a night, or a day, that went wrong is no habit, and chicks are not let freeze by one.
 */
final class RoomBand {
    /** A sensor is never quite at the height of the chicks: ours. */
    private static final double ABOUT_ONE_FIGURE = 4;

    /** About the middle half of what it has held: ours. */
    private static final double ABOUT_HABIT = 1.5;

    /** No habit widens a band by more: ours. */
    private static final double MOST_WIDER = 4;

    /** Four days. */
    private static final int ENOUGH_HOURS = 96;

    private RoomBand() {}

    /** @param hours of the week before */
    static Band of(RoomHeat heat, List<Rollup> hours) {
        double about = heat.lowCelsius() == heat.highCelsius() ? ABOUT_ONE_FIGURE : 0;
        double low = heat.lowCelsius() - about;
        double high = heat.highCelsius() + about;
        if (hours.size() < ENOUGH_HOURS) {
            return new Band(low, high);
        }
        var means = hours.stream().mapToDouble(Rollup::mean).sorted().toArray();
        double coolest = means[means.length / 4] - ABOUT_HABIT;
        double warmest = means[means.length - 1 - means.length / 4] + ABOUT_HABIT;
        return new Band(Math.clamp(coolest, low - MOST_WIDER, low), Math.clamp(warmest, high, high + MOST_WIDER));
    }
}
