package eggwright.climate.development;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * Learns from the farm's own take-offs how much later than the clock each machine hatches.
 *
 * <p>A chick is out at a pull if it hatched at least {@value #DRY_HOURS} hours before (ours: wet chicks are left). Hatching is
 * spread normally about its middle, a window being four standard deviations. Chicks of one set hatch alike: counts are
 * beta-binomial, with a likeness of {@value #LIKENESS} (ours, wide). A set that was emptied in one pull says only that it was over; sets in
 * several pulls say when. Machines scatter about their farm by {@value #MACHINE_HOURS} hours, farms about the handbook by
 * {@value #FARM_HOURS} (ours, normal): few sets are drawn towards the farm, and the farm towards the handbook. The next set may
 * lie {@value #SET_HOURS} hours beside what its machine does on the whole (ours). On a grid of hours.
 */
public final class LearntOffsets {
    static final double FARM_HOURS = 12;
    static final double MACHINE_HOURS = 6;
    static final double SET_HOURS = 4;
    static final double DRY_HOURS = 6;
    static final double LIKENESS = 0.2;

    private static final int MOST_HOURS = 96;
    private static final int POINTS = 2 * MOST_HOURS + 1;
    private static final double MILLIS_PER_HOUR = 3_600_000.0;
    private static final double LEAST_SHARE = 1e-9;

    private final Map<String, List<HatchSeen>> byMachine = new TreeMap<>();

    private LearntOffsets(List<HatchSeen> seen) {
        for (var set : seen) {
            byMachine.computeIfAbsent(set.machine(), m -> new ArrayList<>()).add(set);
        }
    }

    /**
     * @return for each machine that has hatched something; a machine that has not goes by {@link #ofAnother}
     */
    public static Map<String, Learnt> of(List<HatchSeen> seen) {
        return new LearntOffsets(seen).learn();
    }

    /** For a machine of the farm that has hatched nothing yet. */
    public static Learnt ofAnother(List<HatchSeen> seen) {
        var learning = new LearntOffsets(seen);
        return summary(learning.machine(new double[POINTS], learning.farm("")), seen.size());
    }

    private Map<String, Learnt> learn() {
        var learnt = new LinkedHashMap<String, Learnt>();
        byMachine.forEach((machine, sets) ->
                learnt.put(machine, summary(machine(likelihood(sets), farm(machine)), sets.size())));
        return learnt;
    }

    /** What all machines but one say of the farm, as a distribution over hours. */
    private double[] farm(String except) {
        var log = new double[POINTS];
        for (int f = 0; f < POINTS; f++) {
            log[f] = normal(hour(f), FARM_HOURS);
        }
        byMachine.forEach((machine, sets) -> {
            if (!machine.equals(except) || except.isEmpty()) {
                var own = likelihood(sets);
                for (int f = 0; f < POINTS; f++) {
                    var terms = new double[POINTS];
                    for (int o = 0; o < POINTS; o++) {
                        terms[o] = own[o] + normal(hour(o) - hour(f), MACHINE_HOURS);
                    }
                    log[f] += logSum(terms);
                }
            }
        });
        return shares(log);
    }

    /** Hours of one machine, given its own sets and the farm. */
    private double[] machine(double[] own, double[] farm) {
        var log = new double[POINTS];
        for (int o = 0; o < POINTS; o++) {
            double near = 0;
            for (int f = 0; f < POINTS; f++) {
                near += farm[f] * Math.exp(normal(hour(o) - hour(f), MACHINE_HOURS));
            }
            log[o] = own[o] + Math.log(Math.max(near, Double.MIN_NORMAL));
        }
        return shares(log);
    }

    private static double[] likelihood(List<HatchSeen> sets) {
        var log = new double[POINTS];
        for (var set : sets) {
            for (int o = 0; o < POINTS; o++) {
                log[o] += likelihood(set, hour(o));
            }
        }
        return log;
    }

    /** Of the chicks that came out at all, how they fell to the pulls: beta-binomial, pull after pull. */
    private static double likelihood(HatchSeen set, double hoursLater) {
        var pulls = set.pulls();
        double log = 0;
        int left = set.chicks();
        double before = 0;
        double all = out(set, pulls.getLast(), hoursLater);
        for (int i = 0; i < pulls.size() - 1 && left > 0; i++) {
            double now = out(set, pulls.get(i), hoursLater);
            double share =
                    Math.clamp((now - before) / Math.max(all - before, LEAST_SHARE), LEAST_SHARE, 1 - LEAST_SHARE);
            log += betaBinomial(pulls.get(i).chicks(), left, share);
            left -= pulls.get(i).chicks();
            before = now;
        }
        // That they had hatched by the last pull at all.
        return log + Math.log(Math.max(all, LEAST_SHARE));
    }

    private static double out(HatchSeen set, HatchSeen.PullSeen pull, double hoursLater) {
        double hours = Duration.between(set.expectedMiddle(), pull.at()).toMillis() / MILLIS_PER_HOUR;
        double deviation = set.windowHours() / 4;
        double z = (hours - DRY_HOURS - hoursLater) / deviation;
        return 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }

    private static double betaBinomial(int count, int of, double share) {
        double size = 1 / LIKENESS - 1;
        double a = share * size;
        double b = (1 - share) * size;
        return logBeta(count + a, of - count + b) - logBeta(a, b);
    }

    private static double logBeta(double a, double b) {
        return Gamma.logGamma(a) + Gamma.logGamma(b) - Gamma.logGamma(a + b);
    }

    private static double normal(double away, double deviation) {
        return -0.5 * away * away / (deviation * deviation);
    }

    private static int hour(int point) {
        return point - MOST_HOURS;
    }

    private static double logSum(double[] terms) {
        double most = Double.NEGATIVE_INFINITY;
        for (double term : terms) {
            most = Math.max(most, term);
        }
        double sum = 0;
        for (double term : terms) {
            sum += Math.exp(term - most);
        }
        return most + Math.log(sum);
    }

    private static double[] shares(double[] log) {
        double all = logSum(log);
        var shares = new double[log.length];
        for (int i = 0; i < log.length; i++) {
            shares[i] = Math.exp(log[i] - all);
        }
        return shares;
    }

    private static Learnt summary(double[] shares, int sets) {
        double mean = 0;
        double square = 0;
        for (int i = 0; i < POINTS; i++) {
            mean += shares[i] * hour(i);
            square += shares[i] * hour(i) * hour(i);
        }
        return new Learnt(mean, Math.hypot(Math.sqrt(Math.max(0, square - mean * mean)), SET_HOURS), sets);
    }
}
