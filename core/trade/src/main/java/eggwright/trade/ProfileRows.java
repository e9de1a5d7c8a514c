package eggwright.trade;

import eggwright.trade.source.Evidence;
import eggwright.trade.source.Source;
import eggwright.trade.source.Sources;
import eggwright.trade.table.CsvTable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rows of {@code species.csv} and {@code species_more.csv}, read as fields of a profile. */
final class ProfileRows {
    /** Columns of a field: first the low or only one, then the high one; one name stands for both ends. */
    private record Columns(ProfileField field, String low, String high, String unit) {}

    private static final List<Columns> COLUMNS = List.of(
            single(ProfileField.PERIOD_DAYS, "incubation_days_typical", ""),
            range(ProfileField.PERIOD_RANGE_DAYS, "incubation_days", ""),
            range(ProfileField.SETTER_WET_BULB, "setter_wet_bulb_F", "F"),
            range(ProfileField.SETTER_HUMIDITY, "setter_RH_pct", "%"),
            range(ProfileField.HATCHER_WET_BULB, "hatcher_wet_bulb_F", "F"),
            range(ProfileField.HATCHER_HUMIDITY, "hatcher_RH_pct", "%"),
            single(ProfileField.CUSTOMARY_CANDLING_DAYS, "candling_days", ""),
            single(ProfileField.LAST_TURN_DAY, "last_turn_day", ""),
            single(ProfileField.TRANSFER_DAY, "transfer_day", ""),
            single(ProfileField.STORAGE_ADVISED_DAYS, "storage_advised_days", ""),
            single(ProfileField.STORAGE_LIMIT_DAYS, "storage_limit_days", ""),
            range(ProfileField.STORE_TEMPERATURE, "store_F", "F"),
            range(ProfileField.STORE_HUMIDITY, "store_RH_pct", "%"),
            single(ProfileField.EGG_MASS, "egg_mass_g_typical", "g"),
            range(ProfileField.EGG_MASS_RANGE, "egg_mass_g", "g"));

    private ProfileRows() {}

    static List<ProfileRow> of(Species species, CsvTable... tables) {
        var rows = new ArrayList<ProfileRow>();
        for (var table : tables) {
            for (var row : table.rows()) {
                scope(row, species).ifPresent(scope -> rows.add(new ProfileRow(scope, shown(row))));
            }
        }
        return List.copyOf(rows);
    }

    /** Rows of birds that Eggwright keeps no profile of (the golden pheasant, for comparison) are for no species. */
    private static Optional<ProfileRow.Scope> scope(Map<String, String> row, Species species) {
        var word = text(row, "species");
        if (word.equals("any")) {
            return Optional.of(ProfileRow.Scope.ANY_SPECIES);
        }
        return SpeciesWords.ofTable(word).filter(s -> s == species).map(s -> ProfileRow.Scope.THIS_SPECIES);
    }

    private static SourceRow shown(Map<String, String> row) {
        var source = source(row);
        var values = new EnumMap<ProfileField, FieldValue>(ProfileField.class);
        for (var c : COLUMNS) {
            var low = text(row, c.low());
            var high = text(row, c.high());
            if (!low.isEmpty() && !high.isEmpty()) {
                var words = c.low().equals(c.high()) ? low + c.unit() : low + c.unit() + "-" + high + c.unit();
                values.put(c.field(), c.field().read(words));
            }
        }
        temperature(row, "setter_forced_draft", source)
                .ifPresent(t -> values.put(ProfileField.SETTER_TEMPERATURE, ProfileField.SETTER_TEMPERATURE.read(t)));
        temperature(row, "hatcher", source)
                .ifPresent(t -> values.put(ProfileField.HATCHER_TEMPERATURE, ProfileField.HATCHER_TEMPERATURE.read(t)));
        return new SourceRow(source, values, text(row, "note"));
    }

    /** Guides are written in Fahrenheit and studies in Celsius; the other figure of the row was converted and rounded. */
    private static Optional<String> temperature(Map<String, String> row, String column, Source source) {
        var study = source instanceof Source.Published read
                && Sources.shipped().kindOf(read.key()).orElse(Sources.Kind.STUDY) == Sources.Kind.STUDY;
        var scale = study ? "C" : "F";
        var number = text(row, column + "_" + scale);
        return number.isEmpty() ? Optional.empty() : Optional.of(number + scale);
    }

    private static Source source(Map<String, String> row) {
        var evidence = text(row, "evidence");
        if (evidence.equals("computed")) {
            return new Source.Computed(text(row, "note"));
        }
        var source = Sources.shipped().read(text(row, "source")).getFirst();
        return source instanceof Source.Published read
                ? new Source.Published(read.key(), read.reference(), read.address(), evidence(evidence))
                : source;
    }

    private static Evidence evidence(String words) {
        return switch (words) {
            case "seen" -> Evidence.SEEN;
            case "seen in a copy, attribution recalled" -> Evidence.SEEN_IN_A_COPY;
            case "from memory" -> Evidence.RECALLED;
            default -> throw new IllegalStateException("Unknown evidence in the species table: " + words);
        };
    }

    private static Columns single(ProfileField field, String column, String unit) {
        return new Columns(field, column, column, unit);
    }

    private static Columns range(ProfileField field, String column, String unit) {
        return new Columns(field, column + "_min", column + "_max", unit);
    }

    private static String text(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }
}
