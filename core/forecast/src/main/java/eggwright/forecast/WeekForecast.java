package eggwright.forecast;

import eggwright.book.name.SetName;
import eggwright.stats.predictive.WholeCounts;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;

/**
 * Saleable chicks of one species hatching in one week, sets drawn together: a poor spell strikes them all.
 *
 * @param monday first day of the week
 */
public record WeekForecast(LocalDate monday, Species species, List<SetName> sets, WholeCounts chicks) {
    public WeekForecast {
        sets = List.copyOf(sets);
    }
}
