package eggwright.forecast.record;

import eggwright.book.entry.Origin;
import eggwright.book.name.SetName;
import eggwright.stats.predictive.WholeCounts;
import java.time.Instant;

/**
 * A forecast of a set that has since been taken off, held against what came.
 *
 * @param asOf the instant whose knowledge was used
 * @param came saleable chicks that came
 * @param origin whether the set was noted as it went or imported afterwards; the two are scored apart
 */
public record Forecasted(SetName set, Moment moment, Instant asOf, WholeCounts forecast, int came, Origin origin) {
    /** When in the life of a set a forecast is judged. */
    public enum Moment {
        SET_DAY("set_day"),
        AFTER_FIRST_LOOK("after_first_look"),
        AFTER_LAST_LOOK("after_last_look");

        private final String word;

        Moment(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Whether the plain equal-tailed range held what came. */
    public boolean held(double level) {
        return forecast.interval(level).holds(came);
    }

    /**
     * Where what came lies in the forecast, 0 to 1, uniform if forecasts are right: with whole chicks the plain range
     * holds too often, so the step at what came is filled by chance.
     *
     * @param u from 0 to 1
     */
    public double place(double u) {
        return forecast.randomisedPit(came, u);
    }
}
