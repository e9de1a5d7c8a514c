package eggwright.stats.deathcurve;

import eggwright.stats.search.Curvature;
import eggwright.stats.search.Held;
import eggwright.stats.search.Objective;
import eggwright.stats.search.QuasiNewton;
import eggwright.units.OutOfRange;
import java.util.EnumSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The negative log-likelihood of a two-phase curve, with its slope, by logits of shares and logarithms of shapes and
 * scales; and the search for its least from several starts, since two waves can be taken for each other.
 */
final class TwoPhaseSearch implements Objective {
    private static final int DIED = 0;
    private static final int EARLY = 1;
    private static final int SIZE = 6;
    private static final double LEAST_SHAPE = Math.log(0.1);
    private static final double MOST_SHAPE = Math.log(200);
    private static final double CLOSE = 1e-12;
    private static final double NEAR = 1e-6;
    private static final int MOST_ROUNDS = 20;

    private final List<DeathInterval> intervals;
    private final double lastDay;
    private final boolean someSurvived;

    TwoPhaseSearch(List<DeathInterval> intervals) {
        this.intervals = intervals.stream().filter(each -> each.count() > 0).toList();
        lastDay = this.intervals.stream()
                .mapToDouble(each -> each.survived() ? each.fromDay() : each.toDay())
                .max()
                .orElse(0);
        someSurvived = this.intervals.stream().anyMatch(DeathInterval::survived);
    }

    TwoPhaseCurve best() {
        double died = intervals.stream()
                .filter(each -> !each.survived())
                .mapToLong(DeathInterval::count)
                .sum();
        double all = intervals.stream().mapToLong(DeathInterval::count).sum();
        double[][] metric = new double[SIZE][SIZE];
        for (int i = 0; i < SIZE; i++) {
            metric[i][i] = 4 / died;
        }
        @Nullable TwoPhaseCurve best = null;
        for (double early : new double[] {-1, 0.5, 2}) {
            for (double shape : new double[] {0.8, 2}) {
                for (double scale : new double[] {0.08, 0.2}) {
                    for (double late : new double[] {6, 14}) {
                        double[] start = {
                            someSurvived ? Math.log(died / (all - died)) : 0,
                            early,
                            Math.log(shape),
                            Math.log(scale * lastDay),
                            Math.log(late),
                            Math.log(0.87 * lastDay)
                        };
                        var found = from(start, metric);
                        if (Double.isFinite(found.logLikelihood())
                                && (best == null || found.logLikelihood() > best.logLikelihood())) {
                            best = found;
                        }
                    }
                }
            }
        }
        if (best == null) {
            throw new OutOfRange("No curve of two waves gives each of these classes a chance");
        }
        return best;
    }

    /** The likeliest from a start. A wave that runs to nothing is held at half a day, and the rest searched again. */
    private TwoPhaseCurve from(double[] start, double[][] metric) {
        var held = new boolean[SIZE];
        double[] point = start;
        Held free = new Held(this, point, held);
        QuasiNewton.Found found = QuasiNewton.search(free, free.free(point), free.free(metric), CLOSE);
        point = free.whole(found.point());
        // Holding a shape moves its scale a little, and that the shape that half a day asks for.
        for (int round = 0; round < MOST_ROUNDS && Double.isFinite(found.value()) && hold(point, held); round++) {
            free = new Held(this, point, held);
            found = QuasiNewton.search(free, free.free(point), free.free(metric), CLOSE);
            point = free.whole(found.point());
        }
        return curve(free, found, held);
    }

    /** Widens the waves that are narrower than half a day, and those that are held already; false where none is. */
    private static boolean hold(double[] point, boolean[] held) {
        boolean any = false;
        for (int shape = 2; shape < SIZE; shape += 2) {
            double scale = Math.exp(point[shape + 1]);
            double deviation = new Weibull(Math.exp(point[shape]), scale).deviationDays();
            if (deviation < TwoPhaseCurve.NARROWEST_DAYS * (1 - NEAR)) {
                held[shape] = true;
            }
            if (held[shape] && Math.abs(deviation / TwoPhaseCurve.NARROWEST_DAYS - 1) > NEAR) {
                point[shape] = Math.log(shapeOfHalfADay(scale));
                any = true;
            }
        }
        return any;
    }

    private static double shapeOfHalfADay(double scale) {
        double low = Math.exp(LEAST_SHAPE);
        double high = 1e4;
        for (int i = 0; i < 100; i++) {
            double middle = Math.sqrt(low * high);
            if (new Weibull(middle, scale).deviationDays() > TwoPhaseCurve.NARROWEST_DAYS) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private TwoPhaseCurve curve(Held free, QuasiNewton.Found found, boolean[] held) {
        double[] at = free.whole(found.point());
        var one = new Weibull(Math.exp(at[2]), Math.exp(at[3]));
        var other = new Weibull(Math.exp(at[4]), Math.exp(at[5]));
        double share = share(at[EARLY]);
        boolean inOrder = one.meanDay() <= other.meanDay();
        var narrow = EnumSet.noneOf(TwoPhaseCurve.Wave.class);
        if (held[inOrder ? 2 : 4]) {
            narrow.add(TwoPhaseCurve.Wave.EARLY);
        }
        if (held[inOrder ? 4 : 2]) {
            narrow.add(TwoPhaseCurve.Wave.LATE);
        }
        return new TwoPhaseCurve(
                someSurvived ? share(at[DIED]) : 1,
                inOrder ? share : 1 - share,
                inOrder ? one : other,
                inOrder ? other : one,
                narrow,
                lastDay,
                -found.value(),
                found.settled() && isHill(free, found));
    }

    private boolean isHill(Held free, QuasiNewton.Found found) {
        double[][] bend = Curvature.at(free, found.point(), found.metric());
        if (!someSurvived) {
            bend[DIED][DIED] = 1;
        }
        return Curvature.inverse(bend).isPresent();
    }

    @Override
    public int size() {
        return SIZE;
    }

    @Override
    public double at(double[] point, double[] slope) {
        java.util.Arrays.fill(slope, 0);
        for (int phase = 2; phase < SIZE; phase += 2) {
            if (!(point[phase] >= LEAST_SHAPE
                    && point[phase] <= MOST_SHAPE
                    && Math.abs(point[phase + 1] - Math.log(lastDay)) <= Math.log(1000))) {
                return Double.NaN;
            }
        }
        double[] bySlope = new double[SIZE];
        double[] endSlope = new double[SIZE];
        double byEnd = mixed(point, lastDay, endSlope);
        double died = someSurvived ? share(point[DIED]) : 1;
        double value = 0;
        for (var interval : intervals) {
            java.util.Arrays.fill(bySlope, 0);
            double likely;
            if (interval.survived()) {
                double gone = mixed(point, interval.fromDay(), bySlope) / byEnd;
                likely = 1 - died * gone;
                for (int i = EARLY; i < SIZE; i++) {
                    bySlope[i] = -died * (bySlope[i] - gone * endSlope[i]) / byEnd / likely;
                }
                bySlope[DIED] = -died * (1 - died) * gone / likely;
            } else {
                double within = interval.isOneDay()
                        ? density(point, interval.toDay(), bySlope)
                        : between(point, interval, bySlope);
                likely = died * within / byEnd;
                for (int i = EARLY; i < SIZE; i++) {
                    bySlope[i] = bySlope[i] / within - endSlope[i] / byEnd;
                }
                bySlope[DIED] = someSurvived ? 1 - died : 0;
            }
            value -= interval.count() * Math.log(likely);
            for (int i = 0; i < SIZE; i++) {
                slope[i] -= interval.count() * bySlope[i];
            }
        }
        return value;
    }

    private static double share(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }

    /** Chance of having died by a day, its slope added. */
    private static double mixed(double[] point, double day, double[] slope) {
        return add(point, day, slope, 1, false);
    }

    private static double between(double[] point, DeathInterval interval, double[] slope) {
        return add(point, interval.toDay(), slope, 1, false) + add(point, interval.fromDay(), slope, -1, false);
    }

    private static double density(double[] point, double day, double[] slope) {
        return add(point, day, slope, 1, true);
    }

    private static double add(double[] point, double day, double[] slope, double times, boolean density) {
        if (day <= 0) {
            return 0;
        }
        double early = share(point[EARLY]);
        double[] value = new double[2];
        for (int phase = 0; phase < 2; phase++) {
            double weight = times * (phase == 0 ? early : 1 - early);
            double shape = Math.exp(point[2 + 2 * phase]);
            double stretch = Math.log(day) - point[3 + 2 * phase];
            double hazard = Math.exp(shape * stretch);
            double left = Math.exp(-hazard);
            double byShape;
            double byScale;
            if (density) {
                value[phase] = shape / day * hazard * left;
                byShape = value[phase] * (1 + shape * stretch * (1 - hazard));
                byScale = -value[phase] * shape * (1 - hazard);
            } else {
                value[phase] = -Math.expm1(-hazard);
                byShape = hazard * left * shape * stretch;
                byScale = -shape * hazard * left;
            }
            slope[2 + 2 * phase] += hazard > 700 ? 0 : weight * byShape;
            slope[3 + 2 * phase] += hazard > 700 ? 0 : weight * byScale;
        }
        slope[EARLY] += times * early * (1 - early) * (value[0] - value[1]);
        return times * (early * value[0] + (1 - early) * value[1]);
    }
}
