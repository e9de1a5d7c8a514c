package eggwright.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SeasonSlopesTest {
    /** Worked out by hand from DW2001 and FRONTE2010. */
    @Test
    void slopes_areThoseOfThePublishedSeasons() {
        var slopes = SeasonSlopes.PUBLISHED;
        assertEquals(0.0727, slopes.early(), 0.0001);
        assertEquals(0.0727, slopes.mid(), 0.0001);
        assertEquals(0, slopes.late());
        assertEquals(-0.051, slopes.fertility(), 0.001);
        assertEquals(0.031, slopes.spread(), 0.001);
    }

    /** In the middle of the season the hatch of set falls by as much a week as on the way to the published end. */
    @Test
    void hatchOfSet_fallsAsPublished_inTheMiddleOfTheSeason() {
        var slopes = SeasonSlopes.PUBLISHED;
        var guess = SpeciesProfile.of(Species.PHEASANT).losses();
        double aWeek = logit(hatch(guess, slopes, 0.5)) - logit(hatch(guess, slopes, -0.5));
        // Logits from the season's mean to its end, mean of three ages of hens, over seven weeks (FRONTE2010).
        assertEquals(-0.365 / 7, aWeek, 0.0005);
    }

    private static double hatch(FirstGuess guess, SeasonSlopes slopes, double weeks) {
        double fertile = 1 - moved(guess.infertileOfSet().value(), -slopes.fertility() * weeks);
        return fertile
                * (1
                        - moved(guess.earlyDeadOfFertile().value(), slopes.early() * weeks)
                        - moved(guess.midDeadOfFertile().value(), slopes.mid() * weeks)
                        - guess.lateDeadOfFertile().value()
                        - guess.pippedDeadOfFertile().value());
    }

    private static double moved(double share, double logits) {
        return 1 / (1 + Math.exp(-logit(share) - logits));
    }

    private static double logit(double share) {
        return Math.log(share / (1 - share));
    }
}
