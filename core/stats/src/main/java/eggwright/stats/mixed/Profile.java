package eggwright.stats.mixed;

import eggwright.stats.interval.Level;
import eggwright.stats.search.Held;
import eggwright.stats.search.Objective;
import eggwright.stats.search.QuasiNewton;

/**
 * The smallest deviance over all else, with one deviation held: where it has risen by chi-square's quantile, the interval
 * of that deviation ends.
 *
 * <p>Source: Bates et al. 2015, J. Stat. Softw. 67(1), section 5.1 (from memory).
 */
final class Profile {
    private static final double CLOSE = 1e-6;
    private static final double FAR = 20;
    private static final double NEAR = 1e-5;
    private static final int MOST_STEPS = 60;

    private final Objective objective;
    private final double[] best;
    private final double lowest;
    private final double[][] metric;

    Profile(Objective objective, double[] best, double lowest, double[][] metric) {
        this.objective = objective;
        this.best = best.clone();
        this.lowest = lowest;
        this.metric = metric;
    }

    /** The interval of the standard deviation at a place of the point. */
    ProfiledOutcome.DeviationInterval interval(int at, double level) {
        double end = Level.normalEnd(level);
        double asked = end * end / 2;
        double middle = Math.abs(best[at]);
        double low = middle > 0 && rise(at, 0) > asked ? root(at, asked, middle, 0) : 0;
        double outside = Math.max(2 * middle, 0.1);
        double inside = middle;
        while (outside < FAR && rise(at, outside) < asked) {
            inside = outside;
            outside *= 2;
        }
        double high = outside < FAR ? root(at, asked, inside, outside) : Double.POSITIVE_INFINITY;
        return new ProfiledOutcome.DeviationInterval(low, high);
    }

    /** Where the rise is as asked, between a place inside and one outside: regula falsi on its root (Illinois). */
    private double root(int at, double asked, double inside, double outside) {
        double in = Math.sqrt(Math.max(0, rise(at, inside))) - Math.sqrt(asked);
        double out = Math.sqrt(Math.max(0, rise(at, outside))) - Math.sqrt(asked);
        for (int i = 0; i < MOST_STEPS && Math.abs(outside - inside) > NEAR * Math.max(inside, outside); i++) {
            double between = inside + (outside - inside) * in / (in - out);
            double there = Math.sqrt(Math.max(0, rise(at, between))) - Math.sqrt(asked);
            if (Math.abs(there) < NEAR) {
                return between;
            }
            if (there < 0) {
                inside = between;
                in = there;
                out /= 2;
            } else {
                outside = between;
                out = there;
                in /= 2;
            }
        }
        return (inside + outside) / 2;
    }

    private double rise(int at, double deviation) {
        double[] from = best.clone();
        from[at] = deviation;
        var held = new boolean[from.length];
        held[at] = true;
        var free = new Held(objective, from, held);
        var found = QuasiNewton.search(free, free.free(from), free.free(metric), CLOSE);
        return found.value() - lowest;
    }
}
