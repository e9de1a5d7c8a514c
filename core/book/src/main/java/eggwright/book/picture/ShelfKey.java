package eggwright.book.picture;

import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Eggs of one pen and species in the egg room.
 *
 * @param pen absent where pens are not kept apart
 */
public record ShelfKey(@Nullable PenName pen, Species species) implements Comparable<ShelfKey> {
    private static final Comparator<ShelfKey> ORDER = Comparator.comparing(
                    (ShelfKey k) -> k.pen() == null ? "" : k.pen().text())
            .thenComparing(ShelfKey::species);

    @Override
    public int compareTo(ShelfKey other) {
        return ORDER.compare(this, other);
    }
}
