package eggwright.climate.development;

import eggwright.units.OutOfRange;

/**
 * By how much a machine hatches later than the clock says, as far as is known.
 *
 * @param hours later; below 0 earlier
 * @param deviationHours how unsure that is for the next set, one standard deviation
 * @param sets how many sets of this farm it rests on
 */
public record Learnt(double hours, double deviationHours, int sets) {
    /**
     * Of a farm that has hatched nothing yet: as the handbook says, give or take half a day. Ours: handbooks' periods of one
     * species differ by about that.
     */
    public static final Learnt NOTHING = new Learnt(
            0,
            Math.hypot(Math.hypot(LearntOffsets.FARM_HOURS, LearntOffsets.MACHINE_HOURS), LearntOffsets.SET_HOURS),
            0);

    public Learnt {
        OutOfRange.check("Hours later than the clock", hours, -240, 240, "hours");
        OutOfRange.check("Hours unsure", deviationHours, 0, 240, "hours");
    }
}
