package eggwright.trade;

import eggwright.trade.source.Source;
import java.util.EnumMap;
import java.util.Map;

/**
 * What one source says of one species, chosen or not.
 *
 * @param source where it stands
 * @param values the fields that this source has a figure for
 * @param note what the reader of the source has to know; empty text where nothing
 */
public record SourceRow(Source source, Map<ProfileField, FieldValue> values, String note) {
    public SourceRow {
        var copy = new EnumMap<ProfileField, FieldValue>(ProfileField.class);
        copy.putAll(values);
        values = java.util.Collections.unmodifiableMap(copy);
    }
}
