package eggwright.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import org.junit.jupiter.api.Test;

class FarmSpreadTest {
    /** Worked out apart from the program, from the figures of farms.csv (see docs/models/forecast.md). */
    @Test
    void spread_isThatOfThePublishedFarms() {
        assertEquals(0.965, FarmSpread.PUBLISHED.fertility(), 0.001);
        assertEquals(0.482, FarmSpread.PUBLISHED.hatchOfFertile(), 0.001);
    }

    /** Moves of each loss by its spread, independent, must give back the published spread of the hatch of fertile. */
    @Test
    void spreadOfEachLoss_givesBackTheSpreadOfTheHatch() {
        var guess = SpeciesProfile.of(Species.PHEASANT).losses();
        double spread = FarmSpread.PUBLISHED.ofEachLoss(guess);
        var random = new java.util.SplittableRandom(3);
        double[] losses = {
            guess.earlyDeadOfFertile().value(),
            guess.midDeadOfFertile().value(),
            guess.lateDeadOfFertile().value(),
            guess.pippedDeadOfFertile().value()
        };
        int farms = 20_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < farms; i++) {
            double hatch = 1;
            for (double loss : losses) {
                hatch -= 1 / (1 + (1 - loss) / loss * Math.exp(spread * random.nextGaussian()));
            }
            double logit = Math.log(hatch / (1 - hatch));
            sum += logit;
            squares += logit * logit;
        }
        double sd = Math.sqrt(squares / farms - Math.pow(sum / farms, 2));
        assertEquals(FarmSpread.PUBLISHED.hatchOfFertile(), sd, 0.04);
    }

    @Test
    void farms_eachNameAPublication() {
        for (var row : CsvTable.beside(FarmSpread.class, "farms.csv").rows()) {
            var source = Sources.shipped().read(row.getOrDefault("source", "")).getFirst();
            assertTrue(source instanceof Source.Published, row::toString);
        }
    }
}
