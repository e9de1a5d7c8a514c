package eggwright.trade;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a farm says of a species for itself.
 *
 * @param since the day from which the farm uses it
 * @param values only the fields that the farm has its own value for
 */
public record SpeciesOverride(LocalDate since, Map<ProfileField, FieldValue> values) {
    public SpeciesOverride {
        var copy = new EnumMap<ProfileField, FieldValue>(ProfileField.class);
        copy.putAll(values);
        values = java.util.Collections.unmodifiableMap(copy);
    }

    /**
     * One field, read as a person writes it.
     *
     * @throws eggwright.units.OutOfRange if the text is not a value of that field
     */
    public static SpeciesOverride of(ProfileField field, String text, LocalDate since) {
        return new SpeciesOverride(since, Map.of(field, field.read(text)));
    }
}
