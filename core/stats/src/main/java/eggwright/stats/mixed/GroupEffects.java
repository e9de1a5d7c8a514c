package eggwright.stats.mixed;

/**
 * How one grouping scatters, and where each of its levels lies.
 *
 * @param grouping its levels' names, in the order of the effects
 * @param standardDeviation between levels, on the logit; 0 where they scatter by no more than luck
 * @param effects by level, on the logit: the likeliest, given the estimates
 * @param deviations of those effects, given the estimates
 */
public record GroupEffects(Grouping grouping, double standardDeviation, double[] effects, double[] deviations) {
    public GroupEffects {
        effects = effects.clone();
        deviations = deviations.clone();
    }
}
