package eggwright.invented.season;

import eggwright.invented.truth.LossTruth;
import eggwright.trade.BreakOutClass;
import eggwright.trade.DayRange;
import eggwright.trade.Species;
import eggwright.trade.SpeciesDates;
import eggwright.trade.SpeciesProfile;
import java.time.ZonedDateTime;

/** What the season needs to know of a species. */
record Bird(
        SpeciesProfile profile,
        LossTruth losses,
        DayRange early,
        DayRange mid,
        DayRange late,
        double periodDays,
        double eggGrams) {
    static Bird of(Species species, LossTruth losses) {
        var profile = SpeciesProfile.of(species);
        return new Bird(
                profile,
                losses,
                profile.days(BreakOutClass.EARLY_DEAD).value(),
                profile.days(BreakOutClass.MID_DEAD).value(),
                profile.days(BreakOutClass.LATE_DEAD).value(),
                profile.periodDays().value(),
                profile.eggMass().value().grams());
    }

    SpeciesDates dates(ZonedDateTime set) {
        return SpeciesDates.of(profile, set);
    }

    /** What an embryo that is opened on a day looks like. */
    BreakOutClass classOn(int day) {
        if (day <= early.toDay()) {
            return BreakOutClass.EARLY_DEAD;
        }
        return day <= mid.toDay() ? BreakOutClass.MID_DEAD : BreakOutClass.LATE_DEAD;
    }
}
