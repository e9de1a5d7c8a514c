package eggwright.rates.account;

import eggwright.book.picture.Fate;
import eggwright.book.picture.Parcels;
import eggwright.trade.BreakOutClass;
import eggwright.trade.DayRange;

/**
 * When eggs died that the lamp found dead and nobody opened.
 *
 * @param of the parcels among which they are
 * @param fate {@link Fate#DEAD} or {@link Fate#BLOOD_RING}
 * @param days from the look before, on which they may have died after it, to the look that found them; from day 1 where
 *     there was no look before
 */
public record DeathWindow(Parcels of, Fate fate, int eggs, DayRange days, Stage stage) {
    /** Which class of the break-out it would have been. */
    public sealed interface Stage {}

    /** The window lies inside one class of every species concerned. */
    public record OneClass(BreakOutClass what) implements Stage {}

    /** It reaches over several classes: only the days are known. */
    public record DaysOnly() implements Stage {}
}
