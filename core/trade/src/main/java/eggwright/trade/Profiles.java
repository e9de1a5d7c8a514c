package eggwright.trade;

import eggwright.trade.source.Source;
import eggwright.trade.source.Sourced;
import eggwright.trade.table.CsvTable;
import eggwright.units.Mass;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Builds the trade's profile of a species from the tables inside the program, when it is first asked for. A species is
 * built once and always the same, so that two askers at once do no harm.
 */
final class Profiles {
    private static final Map<Species, Profiles> BY_SPECIES = unbuilt();

    /** The tables, read when the first profile is built. */
    private static final class Tables {
        private static final CsvTable MAIN = CsvTable.beside(Profiles.class, "species.csv");
        private static final CsvTable MORE = CsvTable.beside(Profiles.class, "species_more.csv");
        private static final Guesses GUESSES = Guesses.shipped();
    }

    private final Species species;

    /** Null until the first asking. */
    private volatile @Nullable SpeciesProfile built;

    private Profiles(Species species) {
        this.species = species;
    }

    static SpeciesProfile of(Species species) {
        var profiles = BY_SPECIES.get(species);
        if (profiles == null) {
            throw new IllegalStateException("No profile of " + species.word());
        }
        return profiles.built();
    }

    private static Map<Species, Profiles> unbuilt() {
        var all = new EnumMap<Species, Profiles>(Species.class);
        for (var species : Species.values()) {
            all.put(species, new Profiles(species));
        }
        return all;
    }

    private SpeciesProfile built() {
        var before = built;
        if (before != null) {
            return before;
        }
        var rows = ProfileRows.of(species, Tables.MAIN, Tables.MORE);
        var now = new SpeciesProfile(
                species,
                values(species, rows),
                Tables.GUESSES.of(species),
                rows.stream().map(ProfileRow::shown).toList());
        built = now;
        return now;
    }

    private static Map<ProfileField, Sourced<FieldValue>> values(Species species, List<ProfileRow> rows) {
        var values = new EnumMap<ProfileField, Sourced<FieldValue>>(ProfileField.class);
        for (var field : ProfileField.values()) {
            Choice.of(field, rows).ifPresent(row -> values.put(field, chosen(field, row.shown())));
        }
        var looks = fullestCustom(rows);
        values.put(ProfileField.CUSTOMARY_CANDLING_DAYS, looks.map(l -> l));
        values.put(
                ProfileField.CANDLING_DAYS,
                looks.map(l -> new FieldValue.DayList(List.of(l.days().getFirst()))));
        values.put(ProfileField.EGG_MASS_RANGE, lightToHeavy(rows));
        if (values.get(ProfileField.PERIOD_DAYS) instanceof Sourced<FieldValue>(FieldValue.Days period, Source from)) {
            values.put(ProfileField.FIRST_PIP_DAY, Hatch.firstPip(species, period.days(), from));
        }
        if (values.get(ProfileField.PERIOD_RANGE_DAYS)
                instanceof Sourced<FieldValue>(FieldValue.DaysRange period, Source from)) {
            values.put(ProfileField.HATCH_WINDOW_DAYS, Hatch.window(period.days(), from));
        }
        return values;
    }

    private static Sourced<FieldValue> chosen(ProfileField field, SourceRow row) {
        var value = row.values().get(field);
        if (value == null) {
            throw new IllegalStateException(row.source().words() + " has no " + field.word());
        }
        return new Sourced<>(value, row.source());
    }

    /** The custom with the most looks; a source that names one look only doesn't say that there are no others. */
    private static Sourced<FieldValue.DayList> fullestCustom(List<ProfileRow> rows) {
        Sourced<FieldValue.DayList> fullest = new Sourced<>(new FieldValue.DayList(List.of()), new Source.FromMemory());
        for (var row : rows) {
            if (row.shown().values().get(ProfileField.CUSTOMARY_CANDLING_DAYS) instanceof FieldValue.DayList looks
                    && looks.days().size() > fullest.value().days().size()) {
                fullest = new Sourced<>(looks, row.shown().source());
            }
        }
        return fullest;
    }

    private static Sourced<FieldValue> lightToHeavy(List<ProfileRow> rows) {
        var grams = new ArrayList<Double>();
        var from = new ArrayList<Source>();
        for (var row : rows) {
            int before = grams.size();
            if (row.shown().values().get(ProfileField.EGG_MASS) instanceof FieldValue.Weight one) {
                grams.add(one.mass().grams());
            }
            if (row.shown().values().get(ProfileField.EGG_MASS_RANGE) instanceof FieldValue.WeightRange both) {
                grams.add(both.masses().low().grams());
                grams.add(both.masses().high().grams());
            }
            if (grams.size() > before) {
                from.add(row.shown().source());
            }
        }
        var light = grams.stream().mapToDouble(g -> g).min().orElseThrow();
        var heavy = grams.stream().mapToDouble(g -> g).max().orElseThrow();
        return new Sourced<>(
                new FieldValue.WeightRange(new Range<>(Mass.ofGrams(light), Mass.ofGrams(heavy))),
                from.size() == 1
                        ? from.getFirst()
                        : new Source.Computed("lightest and heaviest of "
                                + String.join(
                                        ", ", from.stream().map(Source::words).toList())));
    }
}
