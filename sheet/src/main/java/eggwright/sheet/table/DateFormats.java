package eggwright.sheet.table;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A spreadsheet keeps a date as a number; only the cell's format says that it is one (ECMA-376, part 1, 18.8.30). */
final class DateFormats {
    private DateFormats() {}

    static boolean isDate(@Nullable Integer id, @Nullable String format) {
        if (id != null && ((id >= 14 && id <= 17) || id == 22 || (id >= 27 && id <= 36) || (id >= 50 && id <= 58))) {
            return true;
        }
        if (format == null) {
            return false;
        }
        // Words in quotes, letters behind a backslash and colours or languages in brackets are no places of a date.
        var places =
                format.replaceAll("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]|_.|\\*.", "").toLowerCase(Locale.ROOT);
        return places.contains("y") || (places.contains("d") && places.contains("m"));
    }
}
