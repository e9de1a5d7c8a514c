package eggwright.climate.care;

import eggwright.climate.sensor.Doubt;
import eggwright.climate.sensor.Held;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;

/**
 * Readings that are held back for one reason and belong together.
 *
 * @param count at least 1
 * @param least in the channel's own unit, as it came
 * @param most likewise
 */
public record HeldStretch(Doubt why, Instant from, Instant to, int count, double least, double most) {
    /** Held readings no further apart are of one occasion: ours. */
    private static final Duration TOGETHER = Duration.ofHours(1);

    /** @param held in time order */
    static List<HeldStretch> of(List<Held> held) {
        var stretches = new ArrayList<HeldStretch>();
        var lastOf = new EnumMap<Doubt, Integer>(Doubt.class);
        for (var one : held) {
            var at = lastOf.get(one.why());
            if (at == null || !stretches.get(at).takes(one)) {
                lastOf.put(one.why(), stretches.size());
                stretches.add(new HeldStretch(one.why(), one.at(), one.at(), 1, one.value(), one.value()));
            } else {
                stretches.set(at, stretches.get(at).and(one));
            }
        }
        return stretches;
    }

    private boolean takes(Held one) {
        return !to.plus(TOGETHER).isBefore(one.at());
    }

    private HeldStretch and(Held one) {
        return new HeldStretch(
                why, from, one.at(), count + 1, Math.min(least, one.value()), Math.max(most, one.value()));
    }
}
