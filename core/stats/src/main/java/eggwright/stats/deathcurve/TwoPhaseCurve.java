package eggwright.stats.deathcurve;

import eggwright.units.OutOfRange;
import java.util.List;
import java.util.Set;

/**
 * Two waves of death, early and late: F = (a F1 + (1 - a) F2) / F(L), where F1 and F2 are Weibull distributions, a is the
 * early one's weight, and F(L) is the sum above on the last day L that anybody looked. It is of those that die by that day;
 * how many die at all is a chance of its own.
 *
 * <p>Source: Kuurman, Bailey, Koops and Grossman 2001, Poult. Sci. 80:710. Error: {@code TwoPhaseCurveTest} finds their
 * published curve again from counts made with it, and that no point of a fine search about a fit is likelier.
 *
 * @param deathShare share of all that died by the last day, 0 to 1
 * @param earlyWeight a, the weight of the early wave before the curve is cut at the last day, 0 to 1; for the share of those
 *     that die by then see {@link #earlyShare}
 * @param heldNarrow waves that would be narrower than half a day, likelier still, and are held there: classes of whole
 *     days that overlap can ask for a wave without width
 * @param lastDay the last day that anybody looked
 * @param logLikelihood of the counts, without a multinomial constant
 * @param converged whether the search ended on a hill inside its bounds; otherwise some class is too narrow or too empty
 *     to tell a shape
 */
public record TwoPhaseCurve(
        double deathShare,
        double earlyWeight,
        Weibull early,
        Weibull late,
        Set<Wave> heldNarrow,
        double lastDay,
        double logLikelihood,
        boolean converged) {
    public TwoPhaseCurve {
        heldNarrow = Set.copyOf(heldNarrow);
    }

    /** One of the two. */
    public enum Wave {
        EARLY,
        LATE
    }

    /** Standard deviation below which no wave is taken: days are all that anybody tells apart. */
    public static final double NARROWEST_DAYS = 0.5;

    /** Fewer classes of deaths cannot tell five numbers. */
    public static final int LEAST_CLASSES = 6;

    /**
     * Fits it by maximum likelihood.
     *
     * @throws OutOfRange if the deaths are of fewer than six classes, or no such curve gives each a chance
     */
    public static TwoPhaseCurve of(List<DeathInterval> intervals) {
        long classes = classes(intervals);
        if (classes < LEAST_CLASSES) {
            throw new OutOfRange("Deaths in " + classes + " classes of days cannot tell two waves. Sort them into at "
                    + "least " + LEAST_CLASSES);
        }
        return new TwoPhaseSearch(intervals).best();
    }

    /** In how many different ranges of days there were deaths. */
    public static long classes(List<DeathInterval> intervals) {
        return intervals.stream()
                .filter(each -> each.count() > 0 && !each.survived())
                .map(each -> List.of(each.fromDay(), each.toDay()))
                .distinct()
                .count();
    }

    /** Of those that die by the last day, the share that is of the early wave, 0 to 1: a F1(L) / (a F1(L) + (1 - a) F2(L)). */
    public double earlyShare() {
        return earlyWeight * early.diedBy(lastDay) / mixed(lastDay);
    }

    /** Of those that die by the last day, the share that has died by a day, 0 to 1. */
    public double diedBy(double day) {
        return Math.min(1, mixed(day) / mixed(lastDay));
    }

    private double mixed(double day) {
        return earlyWeight * early.diedBy(day) + (1 - earlyWeight) * late.diedBy(day);
    }
}
