package eggwright.forecast.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.trade.FarmSpread;
import eggwright.trade.Species;
import eggwright.trade.SpeciesProfile;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FirstCurveTest {
    private static final FirstCurve PHEASANT = FirstCurve.of(SpeciesProfile.of(Species.PHEASANT));

    /** By hand from losses.csv: 85.05 % fertile, 73.9 % of fertile hatched, 97 % sound, 98.2 % of chicks saleable. */
    @Test
    void chicks_areThoseOfThePublishedLosses() {
        assertEquals(0.8505 * 0.739 * 0.985 * 0.985 * 0.985 * 0.997, PHEASANT.chicks(), 0.002);
    }

    @Test
    void stages_multiplyToTheWhole() {
        double first = PHEASANT.through(StageKind.SET_TO_FIRST_LOOK, 0, 8);
        double second = PHEASANT.through(StageKind.LOOK_TO_LOOK, 8, 14);
        double last = PHEASANT.through(StageKind.LAST_LOOK_TO_CHICK, 14, 0);
        assertEquals(PHEASANT.through(StageKind.SET_TO_CHICK, 0, 0), first * second * last, 1e-12);
    }

    @Test
    void otherFarms_spreadAsPublished() {
        var random = new SplittableRandom(1);
        double sum = 0;
        double squares = 0;
        int farms = 20_000;
        for (int i = 0; i < farms; i++) {
            double hatch = PHEASANT.elsewhere(random).logit(StageKind.LAST_LOOK_TO_CHICK, 8, 0);
            sum += hatch;
            squares += hatch * hatch;
        }
        double sd = Math.sqrt(squares / farms - Math.pow(sum / farms, 2));
        double spread = FarmSpread.PUBLISHED.ofEachLoss(
                SpeciesProfile.of(Species.PHEASANT).losses());
        // To first order the root of the squared pulls, times the spread of each loss.
        double pulled = Math.sqrt(Arrays.stream(PHEASANT.pulls(StageKind.LAST_LOOK_TO_CHICK, 8, 0))
                .map(pull -> pull * pull)
                .sum());
        assertEquals(pulled * spread, sd, 0.05);
    }

    /** Trays drawn loss by loss scatter at the stage as the likeness says. */
    @Test
    void likeness_isThatOfTraysDrawnLossByLoss() {
        double rho = 0.02;
        for (var species : List.of(Species.PHEASANT, Species.CHUKAR)) {
            var guess = SpeciesProfile.of(species).losses();
            double early = guess.earlyDeadOfFertile().value();
            double mid = guess.midDeadOfFertile().value() / (1 - early);
            double late = guess.lateDeadOfFertile().value()
                    / (1 - early - guess.midDeadOfFertile().value());
            var curve = FirstCurve.of(SpeciesProfile.of(species));
            double even = curve.chicks();
            var random = new SplittableRandom(4);
            double sum = 0;
            double squares = 0;
            int trays = 4000;
            for (int i = 0; i < trays; i++) {
                double chicks = even;
                for (double loss : List.of(guess.infertileOfSet().value(), early, mid, late)) {
                    chicks *= (1 - beta(loss, rho, random)) / (1 - loss);
                }
                sum += chicks;
                squares += chicks * chicks;
            }
            double variance = squares / trays - Math.pow(sum / trays, 2);
            // To first order; Monte Carlo error of a variance of so many trays 2 %.
            assertEquals(
                    rho * curve.likeness(StageKind.SET_TO_CHICK, 0, 0),
                    variance / (even * (1 - even)),
                    0.07 * rho,
                    species.word());
        }
    }

    /** From Hipparchus' quantiles. */
    private static double beta(double mean, double rho, SplittableRandom random) {
        double size = 1 / rho - 1;
        var shape = new org.hipparchus.distribution.continuous.BetaDistribution(mean * size, (1 - mean) * size);
        return shape.inverseCumulativeProbability(random.nextDouble());
    }

    @Test
    void lateSeason_isWorse() {
        assertTrue(PHEASANT.later(6).chicks() < PHEASANT.chicks());
        assertTrue(PHEASANT.later(-6).chicks() > PHEASANT.chicks());
    }
}
