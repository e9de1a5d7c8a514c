package eggwright.forecast;

import eggwright.book.name.SetName;
import eggwright.stats.predictive.WholeCounts;
import eggwright.trade.Species;
import java.time.LocalDate;

/**
 * Saleable chicks to come of one set, those of earlier pulls counted in.
 *
 * @param set the set; for sets whose eggs were pooled the first of them
 * @param hatchOn middle of the hatch window, local date
 * @param eggsIn eggs in machines now
 * @param known how far the set had come when this was worked out
 * @param chicks distribution over whole chicks
 */
public record SetForecast(
        SetName set,
        Species species,
        LocalDate setOn,
        LocalDate hatchOn,
        int eggsSet,
        int eggsIn,
        Known known,
        WholeCounts chicks) {
    /** How much had been seen. */
    public enum Known {
        NOT_LOOKED_AT("not_looked_at"),
        LOOKED_AT("looked_at"),
        /** A first pull was made, more chicks are to come. */
        PULLED("pulled");

        private final String word;

        Known(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
