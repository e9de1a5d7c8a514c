package eggwright.climate.machine;

import eggwright.book.name.SetName;
import eggwright.climate.air.KnownBy;
import eggwright.climate.development.HatchExpected;
import eggwright.climate.development.Learnt;
import eggwright.climate.weight.LossAhead;
import eggwright.climate.weight.SetLoss;
import eggwright.climate.weight.StorageLoss;
import eggwright.trade.Species;
import java.time.Instant;
import java.util.List;

/**
 * The eggs of one set and species that are in a machine.
 *
 * @param day of incubation
 * @param eggs in it, as far as they were counted apart
 * @param storedDays from the middle of lay to the set; 0 where not known
 * @param calendarMiddle the middle of the hatch by the plain calendar
 * @param learnt by how much its hatcher is late, from the farm's own take-offs; it is in {@code hatch} already
 * @param loss since the set
 * @param storage what the egg room took before; not in {@code loss}
 * @param ahead what it will have lost by the transfer and by the first pip, as far as they are ahead
 * @param airKnownHours for how many of its hours in the machines somebody or something read the temperature
 * @param airHours all of them
 */
public record SetInside(
        SetName set,
        Species species,
        int day,
        int eggs,
        double storedDays,
        Instant startedAt,
        Instant calendarMiddle,
        HatchExpected hatch,
        Learnt learnt,
        SetLoss loss,
        StorageLoss storage,
        List<LossAhead> ahead,
        KnownBy airNow,
        long airKnownHours,
        long airHours) {
    public SetInside {
        ahead = List.copyOf(ahead);
    }
}
