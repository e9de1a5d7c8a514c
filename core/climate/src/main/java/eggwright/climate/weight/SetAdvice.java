package eggwright.climate.weight;

import eggwright.egg.loss.HumidityAdvice;
import eggwright.units.Humidity;
import eggwright.units.Temperature;
import java.time.Instant;

/**
 * What to do for one set.
 *
 * @param until when the band is to be reached
 * @param projected the loss then, if the air stays as it is
 * @param neededPct the humidity that lands it in the middle, plain algebra; may be outside what air can be
 * @param neededErrorPct its standard error, in points
 * @param advice inside the limits
 * @param wetBulb at the humidity to run
 * @param step what to do about it
 */
public record SetAdvice(
        SetLoss loss,
        Aim aim,
        Instant until,
        double daysLeft,
        Estimate projected,
        double neededPct,
        double neededErrorPct,
        HumidityAdvice advice,
        Humidity run,
        Temperature wetBulb,
        Step step) {
    /** What to do. */
    public enum Step {
        /** It will land in the band as it is. */
        STAY,
        /** Turn to the humidity that is told. */
        TURN,
        /** The algebra asks for an extreme: half of the way, and weigh again in three days (from memory). */
        HALF_WAY,
        /** No humidity that is safe lands it in the band any more; the nearest is told. */
        OUT_OF_REACH,
        /** No egg of the set was weighed twice: what is told is a guess. */
        WEIGH_FIRST
    }
}
