package eggwright.stats.deathcurve;

import java.util.List;

/**
 * The likeliest chances of dying, as the classes tell them apart: within a step nothing is known of the day.
 *
 * @param steps in order of days, only those with a chance
 * @param logLikelihood of the counts, without a multinomial constant
 * @param converged whether the top was reached: no other chances are likelier by more than 1e-7 for each egg
 */
public record StepCurve(List<Step> steps, double logLikelihood, boolean converged) {
    public StepCurve {
        steps = List.copyOf(steps);
    }

    /**
     * A chance of dying after one day and by another.
     *
     * @param fromDay after which
     * @param toDay by which; infinite: later than anybody looked
     * @param chance 0 to 1
     */
    public record Step(double fromDay, double toDay, double chance) {}

    /** The chance of having died by a day, at its least: steps that reach beyond the day do not count. */
    public double diedBy(double day) {
        return steps.stream()
                .filter(s -> s.toDay() <= day)
                .mapToDouble(Step::chance)
                .sum();
    }
}
