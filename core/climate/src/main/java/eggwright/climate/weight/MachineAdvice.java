package eggwright.climate.weight;

import eggwright.egg.loss.Compromise;
import eggwright.units.Temperature;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What to run one machine at.
 *
 * @param sets each that has days left before its band, oldest first
 * @param together one humidity for all of them; absent where there is none
 * @param wetBulb at that humidity; absent where there is none
 */
public record MachineAdvice(
        List<SetAdvice> sets,
        @Nullable Compromise together,
        @Nullable Temperature wetBulb) {
    public MachineAdvice {
        sets = List.copyOf(sets);
    }

    /** The one humidity, where there is any set to find it for. */
    public Optional<Compromise> compromise() {
        return Optional.ofNullable(together);
    }
}
