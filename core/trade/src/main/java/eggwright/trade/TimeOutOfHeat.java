package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;

/**
 * How long a tray may be out of the machine. Short cooling only slows growth, yet a tray of many minutes warms and cools
 * unevenly and the work gets careless: aim for 10 to 15 minutes, stop at 30 in a room of 75 °F (24 °C) or more.
 */
public final class TimeOutOfHeat {
    private static final Source SOURCE = new Source.FromMemory();

    /** Minutes to aim for. */
    public static final Sourced<Range<Integer>> AIM_MINUTES = new Sourced<>(new Range<>(10, 15), SOURCE);

    /** Minutes after which the tray should be back in. */
    public static final Sourced<Integer> LIMIT_MINUTES = new Sourced<>(30, SOURCE);

    private TimeOutOfHeat() {}
}
