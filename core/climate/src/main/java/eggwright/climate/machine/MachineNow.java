package eggwright.climate.machine;

import eggwright.book.name.MachineName;
import eggwright.climate.air.AirHour;
import eggwright.climate.air.SetPoint;
import eggwright.climate.weight.MachineAdvice;
import java.util.List;

/**
 * One machine as it is now.
 *
 * @param air of the last hour; where nothing was read, the set-point
 * @param setPoint what is taken where nothing is known: the custom of the species in it
 * @param sets oldest first
 * @param advice for those that still have days to go in a setter
 */
public record MachineNow(
        MachineName machine, AirHour air, SetPoint setPoint, List<SetInside> sets, MachineAdvice advice) {
    public MachineNow {
        sets = List.copyOf(sets);
    }
}
