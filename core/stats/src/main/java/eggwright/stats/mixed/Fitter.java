package eggwright.stats.mixed;

import eggwright.stats.search.Held;
import eggwright.stats.search.Objective;
import eggwright.stats.search.QuasiNewton;
import eggwright.units.OutOfRange;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Fits one model: first guess, search, what is at its bound, curvature, and the answer in the terms asked for. */
final class Fitter {
    /** Squared, in units of uncertainty: the point is known to 1e-4 of its standard errors. */
    private static final double CLOSE = 1e-8;

    private static final double SMALL_DEVIATION = 0.1;
    /** Half a deviance that no count could tell from none. */
    private static final double NO_WORSE = 1e-7;

    private static final double RUNAWAY = 20;

    private final MixedModel model;
    private final Problem problem;
    private final Laplace laplace;
    private final Objective objective;
    private final int columns;

    private double[] point = new double[0];
    private double[][] metric = new double[0][0];
    private boolean[] held = new boolean[0];
    private double value;
    private int steps;

    Fitter(MixedModel model, int nodes) {
        this.model = model;
        var design = DesignBuilder.of(model.counts().trials(), model.fixed());
        problem = Problem.of(model, design);
        columns = design.columns();
        laplace = new Laplace(problem);
        objective = nodes > 1 ? new Quadrature(problem, nodes) : laplace;
    }

    MixedOutcome outcome() {
        double yes = Arrays.stream(problem.successes()).sum();
        double all = Arrays.stream(problem.trials()).sum();
        if (all == 0) {
            throw new OutOfRange("0 trials in " + problem.rows() + " rows: there is nothing to learn from");
        }
        if (yes == 0 || yes == all) {
            return new MixedOutcome.NoneOrAll(yes > 0);
        }
        Collinear.refuse(problem.design(), problem.trials());
        var logistic = new Logistic(problem);
        var parting = logistic.parting();
        if (!parting.isEmpty()) {
            return new MixedOutcome.Separated(parting);
        }
        var guess = new FirstGuess(problem, laplace, logistic.coefficients);
        point = guess.point;
        metric = guess.metric;
        held = new boolean[point.length];
        search(laplace);
        if (objective != laplace) {
            search(objective);
        }
        for (int g = 0; columns + g < point.length; g++) {
            if (Math.abs(point[columns + g]) > RUNAWAY) {
                return new MixedOutcome.Unbounded(model.random().get(g).name());
            }
        }
        if (holdWhatIsNone()) {
            search(objective);
        }
        return answer();
    }

    ProfiledOutcome profiled(double level) {
        var outcome = outcome();
        return switch (outcome) {
            case MixedOutcome.Fitted fitted -> {
                var profile = new Profile(objective, point, value, metric);
                yield new ProfiledOutcome(
                        fitted,
                        IntStream.range(columns, point.length)
                                .mapToObj(at -> profile.interval(at, level))
                                .toList());
            }
            case MixedOutcome.NoneOrAll none -> new ProfiledOutcome(none, List.of());
            case MixedOutcome.Separated separated -> new ProfiledOutcome(separated, List.of());
            case MixedOutcome.Unbounded unbounded -> new ProfiledOutcome(unbounded, List.of());
        };
    }

    private void search(Objective of) {
        var free = new Held(of, point, held);
        var found = QuasiNewton.search(free, free.free(point), free.free(metric), CLOSE);
        point = free.whole(found.point());
        spread(free, found.metric());
        value = found.value();
        steps += found.steps();
    }

    private void spread(Held free, double[][] inverse) {
        int[] places = free.freePlaces();
        for (int i = 0; i < places.length; i++) {
            for (int j = 0; j < places.length; j++) {
                metric[places[i]][places[j]] = inverse[i][j];
            }
        }
    }

    /** Deviations that could as well be 0 are set to 0 and held there. */
    private boolean holdWhatIsNone() {
        boolean any = false;
        double[] slope = new double[point.length];
        for (int at = columns; at < point.length; at++) {
            if (Math.abs(point[at]) < SMALL_DEVIATION) {
                double[] without = point.clone();
                without[at] = 0;
                double there = objective.at(without, slope);
                if (there <= value + NO_WORSE) {
                    point = without;
                    value = there;
                    held[at] = true;
                    any = true;
                }
            }
        }
        return any;
    }

    private MixedOutcome answer() {
        var free = new Held(objective, point, held);
        var end = Polish.of(free, free.free(point), free.free(metric));
        spread(free, end.metric());
        steps += end.steps();
        point = free.whole(end.point());
        double[] unused = new double[point.length];
        value = objective.at(point, unused);
        if (objective != laplace) {
            laplace.at(point, unused);
        }
        double[] deviations = Arrays.copyOfRange(point, columns, point.length);
        boolean singular = Arrays.stream(deviations).anyMatch(deviation -> deviation == 0);
        return new MixedOutcome.Fitted(
                FixedEffect.all(problem.design(), point, metric, end.hill()),
                Levels.of(problem, laplace, model.random(), deviations),
                model.counts().logCoefficients() - value,
                problem.rows(),
                steps,
                end.reached(),
                singular,
                problem.design().empty());
    }
}
