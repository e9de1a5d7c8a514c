package eggwright.book.picture;

import eggwright.book.name.MachineName;
import eggwright.book.name.SectionName;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Where a load stood, from an instant on.
 *
 * @param machine absent where not recorded
 * @param section absent where not recorded
 * @param position absent where not recorded
 */
public record Place(
        Instant from,
        @Nullable MachineName machine,
        @Nullable SectionName section,
        @Nullable String position) {}
