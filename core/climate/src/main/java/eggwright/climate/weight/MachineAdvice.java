package eggwright.climate.weight;

import java.util.List;

/**
 * What to run one machine at.
 *
 * @param sets each that has days left before its band, oldest first
 * @param dial one setting for all of them
 */
public record MachineAdvice(List<SetAdvice> sets, Dial dial) {
    public MachineAdvice {
        sets = List.copyOf(sets);
    }

    /** Those that have a voice. */
    public List<SetAdvice> weighed() {
        return sets.stream()
                .filter(set -> set.step() != SetAdvice.Step.WEIGH_FIRST)
                .toList();
    }
}
