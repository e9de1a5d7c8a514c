package eggwright.forecast.history;

import eggwright.trade.BreakOutClass;
import eggwright.trade.DayRange;
import eggwright.trade.FarmSpread;
import eggwright.trade.FirstGuess;
import eggwright.trade.SeasonSlopes;
import eggwright.trade.SpeciesProfile;
import java.util.random.RandomGenerator;

/**
 * What the trade's published losses say before the farm has counted anything: the share of eggs set that is still in the
 * tray on a day, if every clear and dead egg were taken out when it shows. Our own assumptions, without a source: losses
 * of a class are spread evenly over its days, contaminated eggs over the whole time, and cracked ones are seen at the
 * first look. Only the ends of the classes matter much, and the farm's own counts take over soon.
 */
public final class FirstCurve {
    /** Clears and rings show from here on (handbook: look at day 7 in pale shells, 8 to 10 in dark). */
    private static final int CLEARS_SHOW = 5;

    private static final int LOSSES = 9;
    /** The first of them change through a season and from set to set. */
    private static final int CHANGING = 4;

    private static final double SMALL = 0.01;

    private final Shares shares;
    private final Days days;
    private final double lossSpread;

    private FirstCurve(Shares shares, Days days, double lossSpread) {
        this.shares = shares;
        this.days = days;
        this.lossSpread = lossSpread;
    }

    /** Each a share of those that reach the class, so that any of them may change without the others. */
    private record Shares(
            double infertile,
            double early,
            double mid,
            double late,
            double pipped,
            double contaminated,
            double cracked,
            double culled,
            double deadInBasket) {
        static Shares of(FirstGuess guess) {
            double early = guess.earlyDeadOfFertile().value();
            double mid = guess.midDeadOfFertile().value();
            double late = guess.lateDeadOfFertile().value();
            double culled = guess.culledOfHatched().value();
            return new Shares(
                    guess.infertileOfSet().value(),
                    early,
                    mid / (1 - early),
                    late / (1 - early - mid),
                    guess.pippedDeadOfFertile().value() / (1 - early - mid - late),
                    guess.contaminatedOfSet().value(),
                    guess.crackedOfSet().value(),
                    culled,
                    guess.deadInBasketOfHatched().value() / (1 - culled));
        }

        /** Each moved by so many logits, in the order of the components. */
        Shares moved(double[] logits) {
            return new Shares(
                    moved(infertile, logits[0]),
                    moved(early, logits[1]),
                    moved(mid, logits[2]),
                    moved(late, logits[3]),
                    moved(pipped, logits[4]),
                    moved(contaminated, logits[5]),
                    moved(cracked, logits[6]),
                    moved(culled, logits[7]),
                    moved(deadInBasket, logits[8]));
        }

        private static double moved(double share, double logits) {
            return logits == 0 || share <= 0 || share >= 1 ? share : 1 / (1 + (1 - share) / share * Math.exp(-logits));
        }
    }

    private record Days(DayRange early, DayRange mid, DayRange late) {}

    public static FirstCurve of(SpeciesProfile profile) {
        var guess = profile.losses();
        return new FirstCurve(
                Shares.of(guess),
                new Days(
                        profile.days(BreakOutClass.EARLY_DEAD).value(),
                        profile.days(BreakOutClass.MID_DEAD).value(),
                        profile.days(BreakOutClass.LATE_DEAD).value()),
                FarmSpread.PUBLISHED.ofEachLoss(guess));
    }

    /** The curve of some other farm of this species: each loss moved as published farms differ. */
    public FirstCurve elsewhere(RandomGenerator random) {
        var logits = new double[LOSSES];
        for (int i = 0; i < LOSSES; i++) {
            logits[i] = (i == 0 ? FarmSpread.PUBLISHED.fertility() : lossSpread) * random.nextGaussian();
        }
        return moved(logits);
    }

    /** The curve so many weeks after the middle of the season, as published seasons go. */
    public FirstCurve later(double weeks) {
        var slopes = SeasonSlopes.PUBLISHED;
        var logits = new double[LOSSES];
        logits[0] = -slopes.fertility() * weeks;
        logits[1] = slopes.early() * weeks;
        logits[2] = slopes.mid() * weeks;
        logits[3] = slopes.late() * weeks;
        return moved(logits);
    }

    /**
     * How far a stage moves, in logits, where one of the losses moves by one that change through a season and from set to set:
     * infertile, early, middle and late dead, in this order. What is cracked, contaminated, culled and lost at the hatch is
     * taken as even: nothing was published of its changes.
     */
    public double[] pulls(StageKind kind, int fromDay, int toDay) {
        var pulls = new double[CHANGING];
        for (int i = 0; i < CHANGING; i++) {
            var logits = new double[LOSSES];
            logits[i] = SMALL;
            double up = moved(logits).logit(kind, fromDay, toDay);
            logits[i] = -SMALL;
            double down = moved(logits).logit(kind, fromDay, toDay);
            pulls[i] = (up - down) / (2 * SMALL);
        }
        return pulls;
    }

    /**
     * How alike the eggs of a tray are at a stage, 0 to 1, where they are wholly alike in each of those losses: the variance
     * that beta-distributed losses of trays give to the stage, as a share of the greatest it could have.
     */
    public double likeness(StageKind kind, int fromDay, int toDay) {
        double through = through(kind, fromDay, toDay);
        var losses = new double[] {shares.infertile, shares.early, shares.mid, shares.late};
        var pulls = pulls(kind, fromDay, toDay);
        double sum = 0;
        for (int i = 0; i < CHANGING; i++) {
            double scatter = losses[i] * (1 - losses[i]);
            sum += scatter > 0 ? pulls[i] * pulls[i] / scatter : 0;
        }
        return Math.min(1, through * (1 - through) * sum);
    }

    private FirstCurve moved(double[] logits) {
        return new FirstCurve(shares.moved(logits), days, lossSpread);
    }

    /** Share of eggs set that are left after a look on this day, 0 to 1. */
    public double left(int day) {
        return day <= 0 ? 1 : Math.max(0.01, living(day) * sound(day));
    }

    private double living(int day) {
        double fertile = day >= CLEARS_SHOW ? 1 - shares.infertile : 1;
        return fertile
                * (1 - shares.early * past(days.early, day))
                * (1 - shares.mid * past(days.mid, day))
                * (1 - shares.late * past(days.late, day));
    }

    private double sound(int day) {
        return (1 - shares.cracked) * (1 - shares.contaminated * Math.min(1.0, day / (double) days.late.toDay()));
    }

    /** Share of eggs set that become saleable chicks, 0 to 1. */
    public double chicks() {
        int end = days.late.toDay();
        return Math.max(
                0.01, living(end) * sound(end) * (1 - shares.pipped) * (1 - shares.culled) * (1 - shares.deadInBasket));
    }

    /** Share of those there after a look on one day that come through to another, or to chicks; inside 0 to 1. */
    public double through(StageKind kind, int fromDay, int toDay) {
        double share = switch (kind) {
            case SET_TO_FIRST_LOOK -> left(toDay);
            case LOOK_TO_LOOK -> left(toDay) / left(fromDay);
            case LAST_LOOK_TO_CHICK -> chicks() / left(fromDay);
            case SET_TO_CHICK -> chicks();
        };
        return Math.min(0.999, Math.max(0.02, share));
    }

    /** The same in logits. */
    public double logit(StageKind kind, int fromDay, int toDay) {
        double share = through(kind, fromDay, toDay);
        return Math.log(share / (1 - share));
    }

    private static double past(DayRange days, int day) {
        double length = days.toDay() - days.fromDay() + 1;
        return Math.min(1, Math.max(0, (day - days.fromDay() + 1) / length));
    }
}
