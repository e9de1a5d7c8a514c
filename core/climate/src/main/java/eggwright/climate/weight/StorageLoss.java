package eggwright.climate.weight;

import eggwright.climate.air.AirHour;
import eggwright.climate.air.KnownBy;
import java.util.List;

/**
 * What the egg room took of eggs before they were set, in percent of their set mass. It is reckoned, never weighed: nobody
 * weighs eggs as they are laid. It is not in the loss that a band speaks of.
 *
 * @param days that they waited, from the middle of lay; 0 where nobody noted when they were laid
 * @param air how the air of most of that time is known
 */
public record StorageLoss(double days, Estimate loss, KnownBy air) {
    /** Nobody read the room: its air may dry eggs half as fast, or half as fast again. Ours. */
    private static final double UNREAD_VARIATION = 0.25;

    /** @param air from the middle of lay to the set, without gaps; empty where that is not known */
    public static StorageLoss of(double days, List<AirHour> air, Shells shells) {
        if (air.isEmpty()) {
            return new StorageLoss(0, new Estimate(0, 0, 0), KnownBy.SET_POINT);
        }
        double pct = 100 * shells.share() * new Exposure(air).at(air.getLast().to());
        boolean isRead = 2
                        * air.stream()
                                .filter(hour -> hour.wetness() != KnownBy.SET_POINT)
                                .count()
                > air.size();
        double error = Math.hypot(shells.error() / shells.share(), isRead ? 0 : UNREAD_VARIATION) * pct;
        var all = Estimate.of(pct, error);
        return new StorageLoss(
                days,
                new Estimate(pct, Math.max(0, all.low()), all.high()),
                isRead ? KnownBy.READINGS : KnownBy.SET_POINT);
    }
}
