package eggwright.climate.weight;

import eggwright.book.name.SetName;
import eggwright.egg.air.MoistAir;
import eggwright.trade.Species;
import java.time.Instant;
import java.util.List;

/**
 * What the eggs of one set have lost since they were set. Storage before is not in it.
 *
 * @param eggsWeighed at the last weighing, over all trays; 0 where none was weighed
 * @param measured what the scale said, one for each weighing, in time order
 * @param shells how leaky
 * @param now reckoned on to now
 * @param oddities weighings that were left aside
 */
public record SetLoss(
        SetName set,
        Species species,
        int eggsWeighed,
        List<Measured> measured,
        Shells shells,
        Estimate now,
        List<Oddity> oddities) {
    public SetLoss {
        measured = List.copyOf(measured);
        oddities = List.copyOf(oddities);
    }

    /**
     * A weighing of some trays.
     *
     * @param loss since the set
     */
    public record Measured(Instant at, Estimate loss, int eggs) {}

    /** Where it will be, if the air stays like that for so many days more. */
    public Estimate after(MoistAir air, double days) {
        return after(Exposure.perDay(air) * days);
    }

    /**
     * Where it will be, if the air drew so much more from now on.
     *
     * @param exposureKilopascalDays from now on
     */
    public Estimate after(double exposureKilopascalDays) {
        double more = 100 * shells.share() * exposureKilopascalDays;
        // What is unsure of the shells was unsure of the loss so far in the same direction: the errors add.
        double error = now.errorPct() + 100 * shells.error() * exposureKilopascalDays;
        return Estimate.of(now.pct() + more, error);
    }
}
