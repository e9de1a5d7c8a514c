package eggwright.forecast.level;

/**
 * One guess at how a stage scatters on this farm.
 *
 * @param drift spread of the level's wandering over one week, in logits
 * @param sets spread of whole sets about the level, in logits: a bad set is bad for all its trays
 * @param trays likeness of eggs of one tray beyond its set (rho of the beta-binomial), 0 to 1
 * @param weight prior weight, any scale
 */
record Scatter(double drift, double sets, double trays, double weight) {
    private static final double[] DRIFT = {0.0, 0.06, 0.14, 0.28};
    private static final double[] DRIFT_WEIGHT = {0.2, 0.35, 0.3, 0.15};
    private static final double[] SETS = {0.04, 0.15, 0.3, 0.5, 0.8};
    private static final double[] SETS_WEIGHT = {0.2, 0.3, 0.27, 0.15, 0.08};
    private static final double[] TRAYS = {0.0, 0.012, 0.035, 0.09};
    private static final double[] TRAYS_WEIGHT = {0.2, 0.35, 0.3, 0.15};

    static double[] trayGuesses() {
        return TRAYS.clone();
    }

    /**
     * All guesses. The prior weights are ours, for want of a published distribution: they favour moderate scatter, and a
     * few weeks of counts outweigh them.
     */
    static java.util.List<Scatter> guesses() {
        var all = new java.util.ArrayList<Scatter>();
        for (int d = 0; d < DRIFT.length; d++) {
            for (int s = 0; s < SETS.length; s++) {
                for (int t = 0; t < TRAYS.length; t++) {
                    all.add(new Scatter(
                            DRIFT[d], SETS[s], TRAYS[t], DRIFT_WEIGHT[d] * SETS_WEIGHT[s] * TRAYS_WEIGHT[t]));
                }
            }
        }
        return all;
    }
}
