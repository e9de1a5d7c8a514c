package eggwright.book.picture;

import eggwright.book.entry.Weighed;
import java.time.OffsetDateTime;

/** A weighing, and when it was. */
public record WeighedAt(OffsetDateTime at, Weighed what) {}
