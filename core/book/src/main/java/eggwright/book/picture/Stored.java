package eggwright.book.picture;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Eggs waiting in the egg room.
 *
 * @param laidFrom absent where not known
 * @param laidTo absent where not known
 */
public record Stored(@Nullable LocalDate laidFrom, @Nullable LocalDate laidTo, int eggs) {}
