package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import eggwright.units.OutOfRange;
import java.util.EnumMap;
import java.util.Map;

/**
 * How much of its set mass an egg should have lost by a day, as the trade has it: a band, not a line, and for most game
 * birds from memory. Partridges in trials hatched well below it. A farm that weighs learns its own.
 *
 * @param lowPct of the set mass
 * @param highPct of the set mass
 * @param byDay day of incubation
 * @param note what else is known
 */
public record LossTarget(double lowPct, double highPct, double byDay, String note) {
    private static final Map<Species, Sourced<LossTarget>> SHIPPED = shipped();

    public LossTarget {
        OutOfRange.check("Least loss", lowPct, 0, 40, "%");
        OutOfRange.check("Greatest loss", highPct, lowPct, 40, "%");
        OutOfRange.check("Day of the loss", byDay, 1, 60, "days");
    }

    public static Sourced<LossTarget> of(Species species) {
        var target = SHIPPED.get(species);
        if (target == null) {
            throw new IllegalStateException("No weight loss is given for " + species.word());
        }
        return target;
    }

    private static Map<Species, Sourced<LossTarget>> shipped() {
        var targets = new EnumMap<Species, Sourced<LossTarget>>(Species.class);
        for (var row : CsvTable.beside(LossTarget.class, "loss_targets.csv").rows()) {
            var species = SpeciesWords.ofTable(row.getOrDefault("species", "")).orElseThrow();
            var day = row.get("by_day");
            var target = new LossTarget(
                    Double.parseDouble(row.getOrDefault("low_pct", "")),
                    Double.parseDouble(row.getOrDefault("high_pct", "")),
                    day == null ? SpeciesProfile.of(species).transferDay().value() : Double.parseDouble(day),
                    row.getOrDefault("note", ""));
            targets.put(species, new Sourced<>(target, source(row.getOrDefault("source", ""))));
        }
        return targets;
    }

    private static Source source(String key) {
        return key.equals("MEMORY")
                ? new Source.FromMemory()
                : Sources.shipped().named(key).orElseThrow();
    }

    /** The middle of the band, in percent. */
    public double middlePct() {
        return (lowPct + highPct) / 2;
    }

    /** The band on another day, along a straight line from nothing at the set. */
    public LossTarget onDay(double day) {
        return new LossTarget(lowPct * day / byDay, highPct * day / byDay, day, note);
    }
}
