package eggwright.book.picture;

import eggwright.book.name.EntryId;
import eggwright.book.name.PersonName;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A second, blind look that the desk asked for.
 *
 * @param of who is asked; absent where anybody but the first will do
 */
public record SecondLook(
        EntryId asked, OffsetDateTime at, @Nullable PersonName of) {}
