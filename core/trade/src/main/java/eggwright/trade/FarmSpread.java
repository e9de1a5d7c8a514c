package eggwright.trade;

import eggwright.trade.table.CsvTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far apart the published farms of one species lie: spreads (standard deviations) in logits.
 *
 * <p>Worked out from {@code farms.csv}: every species of which at least three farms could be read, each figure with its
 * source; parts of one farm (houses, ages of hens) are taken together first. Spreads about each species' own mean are
 * pooled over species, divided by farms less species.
 *
 * @param fertility of the fertile share of eggs set
 * @param hatchOfFertile of the hatched share of fertile eggs
 */
public record FarmSpread(double fertility, double hatchOfFertile) {
    public static final FarmSpread PUBLISHED =
            new FarmSpread(spread(farms("fertility")), spread(farms("hatch_of_fertile")));

    /**
     * The spread of each loss after fertility, in logits. No three farms were published by class of loss; so all classes
     * are given the same spread, independent of each other, which is an assumption of ours: the one that makes the hatch of
     * fertile spread as published (to first order).
     */
    public double ofEachLoss(FirstGuess guess) {
        double early = guess.earlyDeadOfFertile().value();
        double mid = guess.midDeadOfFertile().value();
        double late = guess.lateDeadOfFertile().value();
        double pipped = guess.pippedDeadOfFertile().value();
        double hatch = 1 - early - mid - late - pipped;
        double squares = 0;
        for (double loss : List.of(early, mid, late, pipped)) {
            // A step of one logit in a loss moves it by p (1 - p), and the hatch by as much.
            squares += Math.pow(loss * (1 - loss), 2);
        }
        return hatchOfFertile * hatch * (1 - hatch) / Math.sqrt(squares);
    }

    /** Species, then farm, then the figures of its parts, as shares. */
    static Map<String, Map<String, List<Double>>> farms(String measure) {
        var farms = new TreeMap<String, Map<String, List<Double>>>();
        for (var row : CsvTable.beside(FarmSpread.class, "farms.csv").rows()) {
            if (measure.equals(row.get("measure"))) {
                farms.computeIfAbsent(row.getOrDefault("species", ""), s -> new LinkedHashMap<>())
                        .computeIfAbsent(row.getOrDefault("farm", ""), f -> new ArrayList<>())
                        .add(Double.parseDouble(row.getOrDefault("pct", "")) / 100);
            }
        }
        return farms;
    }

    private static double spread(Map<String, Map<String, List<Double>>> farms) {
        double squares = 0;
        int freedom = 0;
        for (var species : farms.values()) {
            var logits = species.values().stream().map(FarmSpread::meanLogit).toList();
            double mean =
                    logits.stream().mapToDouble(Double::doubleValue).average().orElse(0);
            for (double logit : logits) {
                squares += (logit - mean) * (logit - mean);
            }
            freedom += logits.size() - 1;
        }
        return Math.sqrt(squares / freedom);
    }

    private static double meanLogit(List<Double> parts) {
        return parts.stream().mapToDouble(p -> Math.log(p / (1 - p))).average().orElse(0);
    }
}
