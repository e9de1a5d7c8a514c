package eggwright.climate.machine;

import eggwright.units.Rate;
import java.time.Instant;

/**
 * What the book says of a set since a bad night, beside the farm's other sets at that age. It is a difference, not its
 * cause: sets differ without any night.
 *
 * @param told by what
 * @param at when that was counted
 * @param lost eggs of those that were counted
 * @param othersLost the same of the other sets of the species that had no such night; of none where there were none
 */
public record Aftermath(Told told, Instant at, Rate lost, Rate othersLost) {
    /** By what it is told. */
    public enum Told {
        /** Eggs that showed a blood ring or had died, at the first look after it. */
        LOOK,
        /** Eggs of the hatcher from which no chick came. */
        TAKE_OFF
    }
}
