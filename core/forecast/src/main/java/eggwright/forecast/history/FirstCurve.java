package eggwright.forecast.history;

import eggwright.trade.BreakOutClass;
import eggwright.trade.DayRange;
import eggwright.trade.FirstGuess;
import eggwright.trade.SpeciesProfile;

/**
 * What the trade's published losses say before the farm has counted anything: the share of eggs set that is still in the
 * tray on a day, if every clear and dead egg were taken out when it shows. Losses within a class are spread evenly over
 * its days, which no source says; only the ends of the classes matter much, and the farm's own counts take over soon.
 */
public final class FirstCurve {
    /** Clears and rings show from here on (handbook: look at day 7 in pale shells, 8 to 10 in dark). */
    private static final int CLEARS_SHOW = 5;

    private final FirstGuess guess;
    private final DayRange early;
    private final DayRange mid;
    private final DayRange late;

    private FirstCurve(SpeciesProfile profile) {
        this.guess = profile.losses();
        this.early = profile.days(BreakOutClass.EARLY_DEAD).value();
        this.mid = profile.days(BreakOutClass.MID_DEAD).value();
        this.late = profile.days(BreakOutClass.LATE_DEAD).value();
    }

    public static FirstCurve of(SpeciesProfile profile) {
        return new FirstCurve(profile);
    }

    /** Share of eggs set that are left after a look on this day, 0 to 1. */
    public double left(int day) {
        double fertile = day >= CLEARS_SHOW ? 1 - guess.infertileOfSet().value() : 1;
        double dead = guess.earlyDeadOfFertile().value() * past(early, day)
                + guess.midDeadOfFertile().value() * past(mid, day)
                + guess.lateDeadOfFertile().value() * past(late, day);
        double spoilt =
                (guess.crackedOfSet().value() + guess.contaminatedOfSet().value())
                        * Math.min(1.0, day / (double) late.toDay());
        return Math.max(0.01, fertile * (1 - dead) - spoilt);
    }

    /** Share of eggs set that become saleable chicks, 0 to 1. */
    public double chicks() {
        double alive = (1 - guess.infertileOfSet().value())
                * (1
                        - guess.earlyDeadOfFertile().value()
                        - guess.midDeadOfFertile().value()
                        - guess.lateDeadOfFertile().value()
                        - guess.pippedDeadOfFertile().value());
        double spoilt = guess.crackedOfSet().value() + guess.contaminatedOfSet().value();
        double sound = 1
                - guess.culledOfHatched().value()
                - guess.deadInBasketOfHatched().value();
        return Math.max(0.01, (alive - spoilt) * sound);
    }

    /** Share of those there after a look on one day that come through to another, or to chicks; inside 0 to 1. */
    public double through(StageKind kind, int fromDay, int toDay) {
        double share = switch (kind) {
            case SET_TO_FIRST_LOOK -> left(toDay);
            case LOOK_TO_LOOK -> left(toDay) / left(fromDay);
            case LAST_LOOK_TO_CHICK -> chicks() / left(fromDay);
            case SET_TO_CHICK -> chicks();
        };
        return Math.min(0.995, Math.max(0.02, share));
    }

    private static double past(DayRange days, int day) {
        double length = days.toDay() - days.fromDay() + 1;
        return Math.min(1, Math.max(0, (day - days.fromDay() + 1) / length));
    }
}
