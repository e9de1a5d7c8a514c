package eggwright.forecast.level;

import eggwright.forecast.chance.Belief;
import eggwright.forecast.chance.Cholesky;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.random.RandomGenerator;

/** One pass through the sets under one guess at the scatter: forward what was learnt, backward what may have been. */
final class Pass {
    private final Field field;
    private final List<Seen> seen;
    private final List<Belief.Step> steps = new ArrayList<>();
    private final Cholesky root;
    private final double[] mean;
    /** How likely the counts are under the guess, in logs, up to what is the same for all guesses. */
    final double log;

    /**
     * @param drift spread of the wandering over one week
     * @param seen by set
     */
    Pass(Field field, double drift, double penSpread, List<Seen> seen) {
        this.field = field;
        this.seen = seen;
        var belief = field.beforehand(penSpread);
        for (int s = 0; s < seen.size(); s++) {
            if (s > 0) {
                steps.add(belief.step(field.wandering(drift, field.weeksSince(s))));
            }
            if (!field.cells.get(s).isEmpty()) {
                belief.add(seen.get(s).said());
            }
        }
        this.root = Cholesky.of(belief.precision, belief.size);
        this.mean = root.solve(belief.pull);
        double squares = 0;
        for (int i = 0; i < mean.length; i++) {
            squares += mean[i] * belief.pull[i];
        }
        this.log = belief.log + squares / 2 - root.logDeterminant() / 2;
    }

    /**
     * One course of the stage.
     *
     * @param lies by set, then species, in logits from what is expected
     * @param level of each species at the first set
     * @param pens offset of each pen
     */
    record Path(double[][] lies, double[] level, double[] pens) {
        /** The later sets of it. */
        Path from(int first) {
            return new Path(Arrays.copyOfRange(lies, first, lies.length), level, pens);
        }
    }

    /** The likeliest course. */
    Path middle() {
        return path(mean.clone(), () -> 0);
    }

    Path draw(RandomGenerator random) {
        var noise = new double[mean.length];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = random.nextGaussian();
        }
        var z = root.backward(noise);
        for (int i = 0; i < z.length; i++) {
            z[i] += mean[i];
        }
        return path(z, random::nextGaussian);
    }

    private Path path(double[] z, DoubleSupplier normal) {
        int m = field.species();
        var lies = new double[seen.size()][];
        for (int s = seen.size() - 1; s >= 0; s--) {
            lies[s] = seen.get(s).lies(field, s, z, noise(m, normal));
            if (s > 0) {
                var moved = steps.get(s - 1).moved(z, noise(m, normal));
                for (int a = 0; a < m; a++) {
                    z[a] -= moved[a];
                }
            }
        }
        var pens = new double[field.pens.size()];
        System.arraycopy(z, 2 * m, pens, 0, pens.length);
        return new Path(lies, z, pens);
    }

    private static double[] noise(int m, DoubleSupplier normal) {
        var noise = new double[m];
        for (int a = 0; a < m; a++) {
            noise[a] = normal.getAsDouble();
        }
        return noise;
    }
}
