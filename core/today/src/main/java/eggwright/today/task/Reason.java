package eggwright.today.task;

import eggwright.trade.ProfileField;
import eggwright.trade.Species;
import eggwright.trade.source.Source;
import java.time.LocalDate;

/** Why now. */
public sealed interface Reason {
    /**
     * The species' day for it: "pheasant, day 21 is transfer".
     *
     * @param field the line of the profile
     * @param day of incubation, maybe with a fraction
     */
    record SpeciesDay(Species species, ProfileField field, double day, Source source) implements Reason {}

    /**
     * How long eggs of this species keep.
     *
     * @param days advised
     */
    record StorageAdvice(Species species, double days, Source source) implements Reason {}

    /** The farm does it so. */
    record FarmHabit(Habit habit) implements Reason {}

    /** The trade does it so. */
    record Custom(Practice practice, Source source) implements Reason {
        public static Custom of(Practice practice) {
            return new Custom(practice, practice.source());
        }
    }

    /** It was promised for this day. */
    record Promised(LocalDate day) implements Reason {}
}
