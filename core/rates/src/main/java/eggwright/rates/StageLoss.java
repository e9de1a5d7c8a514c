package eggwright.rates;

import eggwright.trade.Stage;
import eggwright.units.Rate;

/**
 * Eggs lost at one stage, so far: eggs still in may yet be lost.
 *
 * @param eggs lost, where the count speaks of this group alone
 * @param ofFertile of the fertile, where fertility was seen of all eggs concerned; 0 of 0 where the loss is known only
 *     together with other groups
 * @param ofSet of the eggs set; 0 of 0 where the loss is known only together with other groups
 */
public record StageLoss(Stage stage, int eggs, Rate ofFertile, Rate ofSet) {}
