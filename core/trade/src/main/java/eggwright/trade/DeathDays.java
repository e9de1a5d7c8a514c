package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import java.util.EnumMap;
import java.util.Map;

/**
 * The days that each class of the break-out means: printed for pheasant and in part for chicken, scaled from pheasant
 * by the period for the others, so that the classes of death follow each other without a gap.
 */
final class DeathDays {
    private static final Map<Species, Map<BreakOutClass, Sourced<DayRange>>> PRINTED = read();

    /** The printed days are those of a bird of this many days. */
    private static final double PHEASANT_PERIOD_DAYS = 24;

    private DeathDays() {}

    static Sourced<DayRange> of(SpeciesProfile profile, BreakOutClass seen) {
        if (seen == BreakOutClass.INFERTILE) {
            return new Sourced<>(new DayRange(0, 0), new Source.CommonPractice());
        }
        var own = PRINTED.getOrDefault(profile.species(), Map.of()).get(seen);
        if (own != null) {
            return own;
        }
        var pheasant = PRINTED.getOrDefault(Species.PHEASANT, Map.of()).get(seen);
        if (pheasant == null) {
            throw new IllegalStateException("The table of days has no " + seen.word() + " for pheasant");
        }
        double scale = profile.periodDays().value() / PHEASANT_PERIOD_DAYS;
        var days = pheasant.value();
        int last = (int) Math.ceil(profile.hatchWindowDays().value().high());
        int to = days.toDay() >= PHEASANT_PERIOD_DAYS ? last : before(days.toDay() + 1, scale);
        int from = days.fromDay() <= 1 ? days.fromDay() : before(days.fromDay(), scale) + 1;
        return new Sourced<>(
                new DayRange(Math.min(from, to), to),
                new Source.Computed("from pheasant, scaled by the period; "
                        + pheasant.source().words()));
    }

    /** The last whole day before a pheasant day, at this species' pace. */
    private static int before(int pheasantDay, double scale) {
        return (int) Math.round(pheasantDay * scale) - 1;
    }

    private static Map<Species, Map<BreakOutClass, Sourced<DayRange>>> read() {
        var printed = new EnumMap<Species, Map<BreakOutClass, Sourced<DayRange>>>(Species.class);
        for (var row : CsvTable.beside(DeathDays.class, "death_days.csv").rows()) {
            var species = SpeciesWords.ofTable(row.getOrDefault("species", "")).orElseThrow();
            var seen = BreakOutClass.ofWord(row.getOrDefault("class", "")).orElseThrow();
            var days = new DayRange(
                    Integer.parseInt(row.getOrDefault("from_day", "")),
                    Integer.parseInt(row.getOrDefault("to_day", "")));
            var source = Sources.shipped().read(row.getOrDefault("source", "")).getFirst();
            printed.computeIfAbsent(species, s -> new EnumMap<>(BreakOutClass.class))
                    .put(seen, new Sourced<>(days, source));
        }
        return printed;
    }
}
