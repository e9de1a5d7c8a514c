package eggwright.book.picture;

import eggwright.book.entry.PenChange;
import eggwright.book.name.PenName;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One pen.
 *
 * @param species absent where eggs of the pen were counted but the pen was never opened in the book
 * @param openedOn absent where never noted
 * @param closedOn absent while in use
 */
public record PenPicture(
        PenName pen,
        @Nullable Species species,
        int cocks,
        int hens,
        @Nullable LocalDate openedOn,
        @Nullable LocalDate closedOn,
        List<Changed> changes) {
    /** Days after a change of cocks in which eggs have mixed sires: three weeks (common practice, no source; the
     * handbook has 10 to 14 days usually, three weeks at most, after UMAINE-2072). */
    public static final int MIXED_SIRE_DAYS = 21;

    public PenPicture {
        changes = List.copyOf(changes);
    }

    /** One change of the birds in it. */
    public record Changed(LocalDate on, PenChange change, int cocks, int hens, String why) {}

    /** Whether an egg laid on this day may have either of two sires. */
    public boolean hasMixedSires(LocalDate laidOn) {
        return changes.stream()
                .anyMatch(c -> c.change() == PenChange.COCKS_EXCHANGED
                        && !laidOn.isBefore(c.on())
                        && laidOn.isBefore(c.on().plusDays(MIXED_SIRE_DAYS)));
    }
}
