package eggwright.invented.truth;

/**
 * How the whole farm changes through the season, in logits a week; losses rise where positive.
 *
 * @param driftSd spread of the weekly steps by which the whole farm's fertility wanders, beside its trend
 * @param lossDriftSd the same of each stage of loss, each on its own way
 */
public record TrendTruth(
        double fertilityPerWeek,
        double earlyPerWeek,
        double midPerWeek,
        double latePerWeek,
        double driftSd,
        double lossDriftSd) {
    public static final TrendTruth PLAIN = new TrendTruth(-0.04, 0.05, 0.03, 0, 0.03, 0);

    public TrendTruth {
        Within.range("fertility_per_week", fertilityPerWeek, -2, 2);
        Within.range("early_per_week", earlyPerWeek, -2, 2);
        Within.range("mid_per_week", midPerWeek, -2, 2);
        Within.range("late_per_week", latePerWeek, -2, 2);
        Within.range("drift_sd", driftSd, 0, 5);
        Within.range("loss_drift_sd", lossDriftSd, 0, 5);
    }
}
