package eggwright.climate.development;

import eggwright.units.OutOfRange;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How eggs follow the air: {@code dT/dt = (air - T) / time}, with one time for all of them (Newton's law of cooling). In one such time the gap to the
 * air falls to 37 %, in three to 5 %.
 *
 * <p>A bobwhite egg alone, of some 9 g, reaches the temperature of the air in 38 minutes (Reyna and Burggren 2012, Poultry
 * Science 91:41, abstract seen), which is three such times of 13 minutes. A pheasant egg is three times as heavy: half an
 * hour (ours, by mass). How slow a full machine is was not found published; between one and six hours, likely three, are ours: the eggs
 * are most of what there is to cool.
 */
public record ThermalLag(Duration time) {
    /** A few eggs with much air. */
    public static final ThermalLag FEW_EGGS = new ThermalLag(Duration.ofMinutes(30));

    /** A machine that is well filled. */
    public static final ThermalLag FULL_MACHINE = new ThermalLag(Duration.ofHours(3));

    /** No slower than this is thought possible. */
    public static final ThermalLag SLOWEST = new ThermalLag(Duration.ofHours(6));

    private static final Duration LONGEST_STEP = Duration.ofMinutes(15);

    public ThermalLag {
        OutOfRange.check("Minutes to follow the air", (double) time.toMinutes(), 1, 1440, "minutes");
    }

    /**
     * What the eggs had while the air had this. Before the first piece they had its temperature.
     *
     * @param air in time order, without overlap; where it is silent the eggs keep what they had
     */
    public List<Warmth> felt(List<Warmth> air) {
        var felt = new ArrayList<Warmth>();
        double egg = air.isEmpty() ? 0 : air.getFirst().celsius();
        for (var piece : air) {
            var from = piece.from();
            while (from.isBefore(piece.to())) {
                var to = earlier(from.plus(step(piece, egg)), piece.to());
                double times = seconds(from, to) / (time.toMillis() / 1000.0);
                double after = piece.celsius() + (egg - piece.celsius()) * Math.exp(-times);
                // The mean over the step, exact for this law.
                double mean =
                        times == 0 ? egg : piece.celsius() + (egg - piece.celsius()) * -Math.expm1(-times) / times;
                felt.add(new Warmth(from, to, mean));
                egg = after;
                from = to;
            }
        }
        return felt;
    }

    /** Long where nothing changes, short while eggs still follow. */
    private static Duration step(Warmth piece, double egg) {
        return Math.abs(piece.celsius() - egg) < 0.01 ? piece.length() : LONGEST_STEP;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    private static double seconds(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0;
    }
}
