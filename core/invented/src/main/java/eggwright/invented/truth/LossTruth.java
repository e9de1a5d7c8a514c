package eggwright.invented.truth;

import eggwright.trade.FirstGuess;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;

/**
 * Losses of one species at the start of the season, for eggs of a typical pen, section and age. Each is a share of those
 * that reach the stage.
 *
 * @param earlyPct of fertile eggs
 * @param midPct of those alive after the early days
 * @param latePct of those alive after the middle
 * @param pippedPct of those that pip
 * @param malformedPct of those alive after the middle, found dead with a faulty body
 * @param contaminatedPct of eggs set, fertile or not
 * @param crackedPct of eggs set
 * @param culledPct of chicks
 * @param deadInBasketPct of chicks
 */
public record LossTruth(
        Species species,
        double earlyPct,
        double midPct,
        double latePct,
        double pippedPct,
        double malformedPct,
        double contaminatedPct,
        double crackedPct,
        double culledPct,
        double deadInBasketPct) {
    public static final LossTruth PLAIN = new LossTruth(Species.PHEASANT, 6, 4, 7.5, 1.8, 0.6, 0.8, 1, 1.5, 0.4);

    public LossTruth {
        Within.pct("early_pct", earlyPct);
        Within.pct("mid_pct", midPct);
        Within.pct("late_pct", latePct);
        Within.pct("pipped_pct", pippedPct);
        Within.pct("malformed_pct", malformedPct);
        Within.pct("contaminated_pct", contaminatedPct);
        Within.pct("cracked_pct", crackedPct);
        Within.pct("culled_pct", culledPct);
        Within.pct("dead_in_basket_pct", deadInBasketPct);
    }

    /** The trade's first guess, turned from shares of fertile eggs into shares of those that reach each stage. */
    public static LossTruth ofTrade(Species species) {
        FirstGuess guess = SpeciesProfile.of(species).losses();
        double early = guess.earlyDeadOfFertile().value();
        double mid = guess.midDeadOfFertile().value();
        double late = guess.lateDeadOfFertile().value();
        double pipped = guess.pippedDeadOfFertile().value();
        return new LossTruth(
                species,
                100 * early,
                100 * mid / (1 - early),
                100 * late / (1 - early - mid),
                100 * pipped / (1 - early - mid - late),
                PLAIN.malformedPct,
                100 * guess.contaminatedOfSet().value(),
                100 * guess.crackedOfSet().value(),
                100 * guess.culledOfHatched().value(),
                100 * guess.deadInBasketOfHatched().value());
    }
}
