package eggwright.climate.excursion;

import eggwright.climate.development.Span;
import eggwright.trade.HarmRule;
import java.util.List;

/**
 * What a bad night may have cost the eggs of one set.
 *
 * @param feltCelsius the farthest that the eggs came, from a few eggs in much air to a full machine that cools slowest
 * @param hoursLater how much later they will hatch by it
 * @param lossLowPct least share of live embryos lost
 * @param lossHighPct greatest
 * @param rules what that rests on; empty where nothing that is known speaks of harm
 */
public record NightCost(
        Span feltCelsius, Span hoursLater, double lossLowPct, double lossHighPct, List<HarmRule> rules) {
    public NightCost {
        rules = List.copyOf(rules);
    }
}
