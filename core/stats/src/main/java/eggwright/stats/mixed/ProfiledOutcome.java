package eggwright.stats.mixed;

import java.util.List;

/**
 * A fit with intervals of the groupings' standard deviations.
 *
 * @param outcome the fit, or why there is none
 * @param deviations one interval for each grouping of a fit, in their order; otherwise none
 */
public record ProfiledOutcome(MixedOutcome outcome, List<DeviationInterval> deviations) {
    public ProfiledOutcome {
        deviations = List.copyOf(deviations);
    }

    /**
     * Where a standard deviation may lie: the deviance, smallest over all else, rises by less than chi-square's.
     *
     * @param low 0 or more
     * @param high not finite where the counts set no upper bound
     */
    public record DeviationInterval(double low, double high) {}
}
