package eggwright.sheet.season;

import eggwright.book.entry.Entry;
import eggwright.book.name.FarmId;
import eggwright.book.name.PersonName;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.function.Function;

/**
 * For whom a file is imported.
 *
 * @param zone the farm's own, in which the dates of the file are days
 * @param who imports it
 * @param noted when
 * @param written gives the bytes of an entry as the book keeps them
 */
public record Importing(
        FarmId farm, ZoneId zone, PersonName who, OffsetDateTime noted, Function<Entry, String> written) {}
