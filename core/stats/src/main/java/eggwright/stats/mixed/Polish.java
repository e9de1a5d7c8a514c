package eggwright.stats.mixed;

import eggwright.stats.search.Curvature;
import eggwright.stats.search.Objective;
import eggwright.stats.search.QuasiNewton;

/** Newton's last steps to the lowest point, which leave the curvature there behind. */
final class Polish {
    private static final double CLOSE_AT_LAST = 1e-12;
    private static final int MOST_STEPS = 4;
    /** Half a deviance that no count could tell from none. */
    private static final double NO_WORSE = 1e-7;

    private static final double ROUNDING = 1e-12;

    /**
     * Where the steps ended.
     *
     * @param metric inverse of the curvature; the one given where it never was positive
     * @param hill whether the curvature was positive at the last look
     * @param reached whether a further step would gain nothing that matters
     */
    record End(double[] point, double[][] metric, int steps, boolean hill, boolean reached) {}

    private Polish() {}

    /** Steps from a point; a step that would raise the value is not taken, and ends them short of the lowest point. */
    static End of(Objective objective, double[] from, double[][] given) {
        double[] here = from.clone();
        double[][] metric = given;
        double[] slope = new double[here.length];
        for (int steps = 0; steps < MOST_STEPS; steps++) {
            var inverse = Curvature.inverse(Curvature.at(objective, here, metric));
            if (inverse.isEmpty()) {
                return new End(here, metric, steps, false, false);
            }
            metric = inverse.get();
            double value = objective.at(here, slope);
            double[] step = QuasiNewton.times(metric, slope);
            double gain = QuasiNewton.dot(step, slope);
            if (gain <= CLOSE_AT_LAST) {
                return new End(here, metric, steps, true, true);
            }
            double[] there = new double[here.length];
            for (int j = 0; j < here.length; j++) {
                there[j] = here[j] - step[j];
            }
            if (!(objective.at(there, slope) <= value + NO_WORSE + ROUNDING * Math.abs(value))) {
                return new End(here, metric, steps, true, false);
            }
            here = there;
            if (gain <= Math.sqrt(CLOSE_AT_LAST)) {
                // So close, the curvature is the same.
                return new End(here, metric, steps + 1, true, true);
            }
        }
        return new End(here, metric, MOST_STEPS, true, false);
    }
}
