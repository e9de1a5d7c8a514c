package eggwright.forecast.history;

import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.trade.Species;
import java.util.Map;

/**
 * So many of so many came through a stage, at the grain at which they were counted.
 *
 * @param species of the eggs; of most of them where several were counted together
 * @param of eggs that entered the stage, at least 1
 * @param through eggs that came through it
 * @param trays how many trays were counted together, at least 1
 * @param fromDay day of incubation at which the stage began
 * @param toDay day at which it ended; for chicks the day of take-off
 * @param pens share of the eggs from each pen, as set; empty where not recorded
 */
public record Came(
        SetName set,
        Species species,
        int of,
        int through,
        int trays,
        int fromDay,
        int toDay,
        Map<PenName, Double> pens) {
    public Came {
        pens = Map.copyOf(pens);
        if (!(of >= 1 && through >= 0 && through <= of && trays >= 1)) {
            throw new IllegalArgumentException(through + " of " + of + " eggs in " + trays + " trays");
        }
    }
}
