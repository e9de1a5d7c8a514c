package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import eggwright.units.OutOfRange;
import java.util.List;

/**
 * What heat or cold may cost, as a share of the embryos that were alive: a wide range, for little was ever measured in
 * game birds. The source says what was seen; where it gives no figures, or not for these birds, the range is ours.
 *
 * @param ageFrom share of development from which it speaks, 0 to 1
 * @param ageTo up to which
 * @param celsiusFrom temperature of the egg from which it speaks
 * @param celsiusTo below which
 * @param hoursFrom for more than so many hours in that range
 * @param hoursTo up to so many
 * @param lowPct least share of live embryos lost
 * @param highPct greatest
 */
public record HarmRule(
        double ageFrom,
        double ageTo,
        double celsiusFrom,
        double celsiusTo,
        double hoursFrom,
        double hoursTo,
        double lowPct,
        double highPct,
        Source source,
        String note) {
    private static final List<HarmRule> SHIPPED = read();

    public HarmRule {
        OutOfRange.check("Least loss", lowPct, 0, 100, "%");
        OutOfRange.check("Greatest loss", highPct, lowPct, 100, "%");
    }

    /** All that are known. */
    public static List<HarmRule> all() {
        return SHIPPED;
    }

    /** Whether it speaks of eggs so old, whatever they lived through. */
    public boolean isOfAge(double age) {
        return age >= ageFrom && (age < ageTo || ageTo == 1);
    }

    /** Whether it speaks of eggs so warm. */
    public boolean isOfTemperature(double celsius) {
        return celsius >= celsiusFrom && celsius < celsiusTo;
    }

    /** Whether it speaks of so long a time in its range. */
    public boolean isOfLength(double hours) {
        return hours > hoursFrom && hours <= hoursTo;
    }

    private static List<HarmRule> read() {
        return CsvTable.beside(HarmRule.class, "harm.csv").rows().stream()
                .map(row -> new HarmRule(
                        number(row.get("age_from")),
                        number(row.get("age_to")),
                        number(row.get("celsius_from")),
                        number(row.get("celsius_to")),
                        number(row.get("hours_from")),
                        number(row.get("hours_to")),
                        number(row.get("low_pct")),
                        number(row.get("high_pct")),
                        Sources.shipped().named(row.getOrDefault("source", "")).orElseThrow(),
                        row.getOrDefault("note", "")))
                .toList();
    }

    private static double number(@org.jspecify.annotations.Nullable String cell) {
        if (cell == null) {
            throw new IllegalStateException("A line of harm.csv has an empty number");
        }
        return Double.parseDouble(cell);
    }
}
