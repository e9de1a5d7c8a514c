package eggwright.rates.candler;

import eggwright.rates.Basis;
import eggwright.units.Rate;
import java.util.Map;

/**
 * Infertile eggs that a person left in. Definitions: {@code docs/definitions.md}, People at the lamp. {@link
 * eggwright.stats.interval.Intervals#wilson95} puts its interval round the rate.
 *
 * @param missed left in and found infertile when opened later, of these and the clears that the person took out
 * @param basis whether the clears taken out were opened: unopened ones count as infertile, so the rate is then rather
 *     too low
 * @param undecided eggs that may have been missed as well: infertile among eggs opened together, later clears that were
 *     not opened, eggs taken out unsorted
 * @param looks looks that the rate speaks of
 * @param leftOut looks that it does not, by why; none of 0
 * @param eggDays days that missed eggs lay in a machine, each up to the next look at it or until it was taken out: room
 *     taken, and days on which one may have burst
 * @param hatcherPlaces places in the hatcher that missed eggs took, where this was the last look before
 */
public record MissedClears(
        Rate missed,
        Basis basis,
        int undecided,
        int looks,
        Map<NotTold, Integer> leftOut,
        long eggDays,
        int hatcherPlaces) {
    public MissedClears {
        leftOut = Map.copyOf(leftOut);
    }
}
