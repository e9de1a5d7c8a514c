package eggwright.forecast;

import eggwright.stats.predictive.WholeCounts;
import java.util.List;

/**
 * What may come of all eggs in machines.
 *
 * @param sets in order of set day
 * @param weeks in order of week, then species
 * @param total all of them together; certainly 0 where no egg is in
 */
public record Forecast(List<SetForecast> sets, List<WeekForecast> weeks, WholeCounts total) {
    public Forecast {
        sets = List.copyOf(sets);
        weeks = List.copyOf(weeks);
    }
}
